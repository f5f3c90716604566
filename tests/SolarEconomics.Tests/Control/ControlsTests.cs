using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

public class ControlsTests
{
    private static Conditions Priced(double[] use, double[] sun, double[] buy, double sell = 0.05) => new(LoadSeries.Of(Made.HoursOf(use.Length), use))
    {
        Arrays = [ArraySupply.Ac("roof", sun)],
        ImportPricePerKwh = buy,
        ExportPricePerKwh = Enumerable.Repeat(sell, use.Length).ToArray(),
    };

    [Fact]
    public void Time_shifting_buys_in_the_cheap_hour_what_the_dear_hour_uses()
    {
        var conditions = Priced([0, 0, 5], [0, 0, 0], [0.10, 0.20, 0.40]);
        var system = new EnergySystem { Battery = Battery.Of(4, 0.81) };
        var flows = system.Run(conditions, new TimeShift());
        Assert.Equal(4 / 0.9, flows[FlowPath.GridToBattery][0], 9);
        Assert.Equal(4 * 0.9, flows[FlowPath.BatteryToUse][2], 9);
        // By hand: 0.40 × 0.81 − 0.10 is 0.224; above that threshold nothing is bought, in the second hour 0.124 was too little already.
        Assert.Equal(0, system.Run(conditions, new TimeShift { ThresholdPerKwh = 0.2241 }).Totals[FlowPath.GridToBattery]);
        Assert.True(system.Run(conditions, new TimeShift { ThresholdPerKwh = 0.2239 }).Totals[FlowPath.GridToBattery] > 0);
    }

    [Fact]
    public void Time_shifting_leaves_room_for_the_sun_and_holds_for_the_peak()
    {
        var conditions = Priced([0, 1, 5], [0, 0, 0], [0.10, 0.20, 0.40]);
        var flows = new EnergySystem { Battery = Battery.Of(4, 1) }.Run(conditions, new TimeShift { BuyUpToShare = 0.5, ThresholdPerKwh = 0.25, HoldBelowPrice = 0.3 });
        Assert.Equal(2, flows[FlowPath.GridToBattery][0], 9);
        Assert.Equal(0, flows[FlowPath.BatteryToUse][1]);
        Assert.Equal(2, flows[FlowPath.BatteryToUse][2], 9);
    }

    [Fact]
    public void Room_kept_for_noon_curtails_less_than_filling_in_the_morning()
    {
        double[] sun = [0, 0, 0, 0, 0, 0, 0, 3, 3, 3, 6, 6, 6, 3, 0, 0], use = new double[16];
        var system = new EnergySystem { Battery = Battery.Of(9, 1), Grid = new GridConnection { MostExportKw = 3 } };
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(16), use)) { Arrays = [ArraySupply.Ac("roof", sun)] };
        var early = system.Run(conditions, Control.SelfConsumption).Totals;
        var late = system.Run(conditions, new RoomForNoon { StoreAllBelowShare = 0 }).Totals;
        Assert.Equal(9, early[FlowPath.ArrayCurtailed], 9);
        Assert.Equal(0, late[FlowPath.ArrayCurtailed], 9);
    }

    [Fact]
    public void Feed_in_first_exports_all_and_stores_only_what_the_limit_would_curtail()
    {
        var system = new EnergySystem { Battery = Battery.Of(5, 1), Grid = new GridConnection { MostExportKw = 3 } };
        var flows = Made.Run(system, [5, 2, 0], [0, 0, 1], new FeedInFirst());
        Assert.Equal([2, 0, 0], flows[FlowPath.ArrayToBattery].ToArray());
        Assert.Equal([3, 3, 0], new[] { flows.ExportKwh(0), flows.ExportKwh(1), flows.ExportKwh(2) });
        Assert.Equal(1, flows[FlowPath.BatteryToUse][2], 12);
    }

    [Fact]
    public void A_peak_is_held_at_its_power_and_the_battery_refills_below_it()
    {
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 4, StoredAtStartKwh = 4 } };
        var flows = Made.Run(system, new double[4], [5, 6, 1, 1], new PeakShaving(4));
        Assert.Equal([4, 4, 4, 1], Enumerable.Range(0, 4).Select(flows.ImportKwh).ToArray());
        Assert.Equal(4, flows.StoredKwh[^1], 12);
    }

    [Fact]
    public void A_reserve_is_given_only_when_the_grid_is_out()
    {
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 4, StoredAtStartKwh = 4 }, Grid = new GridConnection { RunsInOutages = true } };
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(3), new double[] { 3, 3, 3 })) { GridIsOut = new[] { false, false, true } };
        var flows = system.Run(conditions, new BackupReserve(Control.SelfConsumption, 0.5));
        Assert.Equal([2, 0, 2], flows[FlowPath.BatteryToUse].ToArray());
        Assert.Equal([0, 0, 1], flows[FlowPath.Unserved].ToArray());
    }

    [Fact]
    public void An_ordinary_plant_is_dark_when_the_grid_is_out()
    {
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(1), new double[] { 3 })) { Arrays = [ArraySupply.Ac("roof", new double[] { 5 })], GridIsOut = new[] { true } };
        var flows = new EnergySystem { Battery = new Battery { UsableKwh = 4, StoredAtStartKwh = 4 } }.Run(conditions, Control.SelfConsumption);
        Assert.Equal(3, flows.Totals.UnservedKwh);
        Assert.Equal(5, flows.Totals[FlowPath.ArrayCurtailed]);
        Assert.Equal(0, flows.ResidualKwh(0), 12);
    }

    [Fact]
    public void A_control_of_one_expression_knows_the_local_hour()
    {
        var evenings = Control.Of("evenings only", now => now.HourOfDay >= 17 ? now.Cover() : now.Store());
        var use = Enumerable.Repeat(1.0, 24).ToArray();
        var flows = Made.Run(new EnergySystem { Battery = new Battery { UsableKwh = 20, StoredAtStartKwh = 20 } }, new double[24], use, evenings);
        Assert.Equal(7, flows.Totals[FlowPath.BatteryToUse], 12);
        Assert.Equal("evenings only", flows.ControlName);
    }

    [Fact]
    public void A_waiting_load_takes_the_sun_and_is_done_by_its_deadline()
    {
        var water = new DeferrableLoad("water", 3, 2, HourSpan.Parse("08:00-16:00"));
        var sun = Enumerable.Range(0, 24).Select(i => i is 10 ? 1.5 : 0).ToArray();
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(24), new double[24])) { Arrays = [ArraySupply.Ac("roof", sun)], Deferrable = [water] };
        var flows = new EnergySystem().Run(conditions, Control.SelfConsumption);
        Assert.Equal(1.5, flows.Deferrable[0].Kwh.Span[10], 12);
        Assert.Equal(1.5, flows.Deferrable[0].Kwh.Span[15], 12);
        Assert.Equal(0, flows.Deferrable[0].MissedKwh, 12);
        Assert.Equal(1.5, flows.Totals[FlowPath.ArrayToUse], 12);
        Assert.Equal(1, new EnergySystem().Run(conditions with { Deferrable = [water with { KwhPerDay = 17, LateHours = 0 }] }, Control.SelfConsumption).Deferrable[0].MissedKwh, 12);
    }

    [Fact]
    public void What_a_blackout_took_from_a_waiting_load_runs_late_as_soon_as_there_is_power()
    {
        // 3 kWh between 08:00 and 16:00 at 2 kW, grid and so the plant dark from 06:00 to 18:00: 2 kWh at 18:00 and 1 kWh at 19:00.
        var flows = new EnergySystem().Run(Blackout(24, 6, 18, new DeferrableLoad("water", 3, 2, HourSpan.Parse("08:00-16:00"))), Control.SelfConsumption);
        var water = flows.Deferrable[0];
        Assert.Equal(2, water.Kwh.Span[18], 12);
        Assert.Equal(1, water.LateKwh.Span[19], 12);
        Assert.Equal(3, water.LateKwh.ToArray().Sum(), 12);
        Assert.Equal(0, water.MissedKwh, 12);
        Assert.Equal(0, flows.Totals.UnservedKwh, 12);
        Assert.Equal(3, flows.Totals.WantedKwh, 12);
    }

    [Fact]
    public void What_is_still_missing_when_late_hours_end_is_given_up_and_counts_as_unserved()
    {
        // Dark until 18:00, tried again for 1 h after the deadline at 16:00: all 3 kWh are given up in the hour from 16:00, where their time was over.
        var flows = new EnergySystem().Run(Blackout(24, 6, 18, new DeferrableLoad("water", 3, 2, HourSpan.Parse("08:00-16:00")) { LateHours = 1 }), Control.SelfConsumption);
        Assert.Equal(3, flows.Deferrable[0].GivenUpKwh.Span[16], 12);
        Assert.Equal(3, flows.Totals.UnservedKwh, 12);
        Assert.Equal(3, flows.Totals.WantedKwh, 12);
        Assert.Equal(1, flows.Totals.UnservedHours, 12);
        Assert.Equal(0, flows.UnservedByPart()["home"].Sum(), 12);
        // Never tried again: given up at the deadline itself.
        var never = new EnergySystem().Run(Blackout(24, 6, 18, new DeferrableLoad("water", 3, 2, HourSpan.Parse("08:00-16:00")) { LateHours = 0 }), Control.SelfConsumption);
        Assert.Equal(3, never.Deferrable[0].GivenUpKwh.Span[15], 12);
    }

    [Fact]
    public void An_island_that_runs_short_serves_the_home_first_and_the_waiting_load_later()
    {
        // 1 kWh of home use each hour; the island's battery holds 1.5 kWh. Of 2 kWh of water heating due from 00:00 to 02:00 half a kWh is served; sun at 04:00 brings the rest.
        var sun = new double[6];
        sun[4] = 5;
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(6), new double[] { 1, 0, 0, 0, 0, 0 }))
        {
            Arrays = [ArraySupply.Ac("roof", sun)], Deferrable = [new DeferrableLoad("water", 2, 1, HourSpan.Parse("00:00-02:00"))],
        };
        var flows = new EnergySystem { Grid = GridConnection.None, Battery = new Battery { UsableKwh = 2, StoredAtStartKwh = 1.5 } }.Run(conditions, Control.SelfConsumption);
        Assert.Equal([0.5, 0, 0, 0, 1, 0.5], flows.Deferrable[0].Kwh.ToArray().Select(kwh => Math.Round(kwh, 9)));
        Assert.Equal(0, flows.Totals.UnservedKwh, 9);
        Assert.All(Enumerable.Range(0, 6), i => Assert.Equal(0, flows.ResidualKwh(i), 9));
    }

    [Fact]
    public void What_waits_over_all_its_days_is_given_or_given_up_to_the_last_kWh() =>
        Gen.Select(RandomPlant.Any, Gen.Double[0, 30]).Sample((plant, lateHours) =>
        {
            var loads = plant.Conditions.Deferrable.Select(load => load with { LateHours = lateHours }).ToList();
            var flows = plant.System.Run(plant.Conditions with { Deferrable = loads }, plant.Control);
            foreach (var (load, outcome) in loads.Zip(flows.Deferrable))
            {
                var days = Naive(load, flows.Time);
                Assert.Equal(days * load.KwhPerDay, outcome.Kwh.ToArray().Sum() + outcome.MissedKwh, 5e-8);
                for (var i = 0; i < flows.Time.Count; i++)
                {
                    Assert.InRange(outcome.Kwh.Span[i], 0, (load.MostKw * flows.Time.Hours[i]) + 1e-9);
                    Assert.InRange(outcome.LateKwh.Span[i], 0, outcome.Kwh.Span[i] + 1e-12);
                }
            }
            Assert.Equal(plant.Conditions.Load.Kwh.ToArray().Sum() + flows.Deferrable.Sum(d => d.Kwh.ToArray().Sum() + d.MissedKwh), flows.WantedKwh.ToArray().Sum(), 5e-8);
        }, iter: 2000);

    /// <summary>How often its hours begin, counted by walking through the intervals.</summary>
    private static int Naive(DeferrableLoad load, Timeline time)
    {
        var days = 0;
        var wasInside = false;
        for (var i = 0; i < time.Count; i++)
        {
            var isInside = load.Between.Contains(time.Clock.MinuteOfDay[i]);
            if (isInside && !wasInside) days++;
            wasInside = isInside;
        }
        return days;
    }

    private static Conditions Blackout(int hours, int from, int to, DeferrableLoad load) => new(LoadSeries.Of(Made.HoursOf(hours), new double[hours]))
    {
        GridIsOut = Enumerable.Range(0, hours).Select(i => i >= from && i < to).ToArray(), Deferrable = [load],
    };
}
