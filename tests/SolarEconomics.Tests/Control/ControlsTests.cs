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
        Assert.Equal(1, new EnergySystem().Run(conditions with { Deferrable = [water with { KwhPerDay = 17 }] }, Control.SelfConsumption).Deferrable[0].MissedKwh, 12);
    }
}
