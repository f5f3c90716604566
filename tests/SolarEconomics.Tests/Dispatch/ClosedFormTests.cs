using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Limiting cases whose answer is known without a simulation.</summary>
public class ClosedFormTests
{
    private static readonly double[] s_sun = [0, 0, 3, 5, 6, 4, 1, 0, 0, 0, 2, 7];
    private static readonly double[] s_use = [1, 2, 1, 1, 2, 1, 3, 4, 2, 1, 1, 1];

    [Fact]
    public void A_battery_of_no_capacity_changes_nothing()
    {
        var without = Made.Run(new EnergySystem(), s_sun, s_use);
        var none = Made.Run(new EnergySystem { Battery = new Battery { UsableKwh = 0 } }, s_sun, s_use);
        foreach (var path in Enum.GetValues<FlowPath>()) Assert.Equal(without[path].ToArray(), none[path].ToArray());
        Assert.Equal(s_sun.Zip(s_use, Math.Min).Sum(), without.Totals[FlowPath.ArrayToUse], 12);
        Assert.Equal(s_sun.Zip(s_use, (sun, use) => Math.Max(0, use - sun)).Sum(), without.Totals.ImportKwh, 12);
    }

    [Fact]
    public void An_endless_lossless_battery_lets_import_be_only_what_came_before_the_sun()
    {
        var flows = Made.Run(new EnergySystem { Battery = new Battery { UsableKwh = 1000 } }, s_sun, s_use);
        var (worst, running) = (0.0, 0.0);
        foreach (var (sun, use) in s_sun.Zip(s_use))
        {
            running += sun - use;
            worst = Math.Min(worst, running);
        }
        Assert.Equal(-worst, flows.Totals.ImportKwh, 12);
        Assert.Equal(0, flows.Totals.ExportKwh);
    }

    [Theory]
    [InlineData(1.0, 4), InlineData(0.5, 8), InlineData(1 / 12.0, 48)]
    public void A_lossless_square_wave_is_carried_whole_at_any_length_of_interval(double hours, int half)
    {
        var sun = Enumerable.Range(0, 4 * half).Select(i => i / half % 2 == 0 ? 2 * hours : 0).ToArray();
        var use = Enumerable.Range(0, 4 * half).Select(i => i / half % 2 == 1 ? 2 * hours : 0).ToArray();
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(4 * half, hours), use)) { Arrays = [ArraySupply.Ac("roof", sun)] };
        var totals = new EnergySystem { Battery = Battery.Of(8, 1, 2) }.Run(conditions, Control.SelfConsumption).Totals;
        Assert.Equal(0, totals.ImportKwh, 9);
        Assert.Equal(0, totals.ExportKwh, 9);
        Assert.Equal(1, totals.SelfConsumption, 9);
        Assert.Equal(1, totals.SelfSufficiency, 9);
        Assert.Equal(2, totals.Cycles, 9);
    }

    [Fact]
    public void A_taper_ends_at_the_same_charge_in_one_hour_and_in_many_parts_of_it()
    {
        var taper = new ChargeTaper(0.6, 0.1);
        var whole = taper.MostIntoCells(2, 10, 5, 3);
        var parts = 2.0;
        for (var i = 0; i < 300; i++) parts += taper.MostIntoCells(parts, 10, 5, 0.01);
        Assert.Equal(2 + whole, parts, 9);
        Assert.InRange(2 + whole, 6, 10);
    }

    [Fact]
    public void Self_discharge_of_a_month_is_the_share_that_was_stated()
    {
        var battery = new Battery { UsableKwh = 10, StoredAtStartKwh = 10, SelfDischargePerMonth = 0.03 };
        var flows = Made.Run(new EnergySystem { Battery = battery }, new double[720], new double[720], Control.Of("rest", _ => Order.Rest));
        Assert.Equal(9.7, flows.StoredKwh[^1], 9);
        Assert.Equal(0.3, flows.Totals.LostKwh, 9);
    }

    [Fact]
    public void Sums_of_the_months_are_the_sum_of_the_year()
    {
        var time = Timeline.Year(2024, Duration.FromHours(1), Made.Dublin);
        var load = LoadSeries.OfMonths(time, [.. Enumerable.Range(1, 12).Select(m => 300.0 + m)], LoadProfile.Household);
        var sun = Enumerable.Range(0, time.Count).Select(i => Math.Max(0, 3 * Math.Sin(((i % 24) - 6) * Math.PI / 12))).ToArray();
        var flows = new EnergySystem { Battery = Battery.Of(8, 0.9, 3) }.Run(new Conditions(load) { Arrays = [ArraySupply.Ac("roof", sun)] }, Control.SelfConsumption);
        Assert.Equal(8784, time.Count);
        Assert.Equal(12, flows.ByMonth().Count);
        Assert.Equal(3600 + 78, flows.Totals.WantedKwh, 9);
        Assert.Equal(flows.Totals.ImportKwh, flows.ByMonth().Sum(m => m.ImportKwh), 9);
        Assert.Equal(flows.Totals.SelfConsumption * flows.Totals.GenerationKwh, flows.ByMonth().Sum(m => m.SelfConsumption * m.GenerationKwh), 9);
    }
}
