using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Tariffs priced together. Oracles: each plan alone, and the bills without rounding; no published table sums many tariffs.</summary>
public sealed class BillingPlansTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    // Six weeks across the spring change of the clock: one day has 46 half hours.
    private static readonly IntervalGrid Grid = new(new LocalDate(2024, 2, 20).AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), 48 * 42);

    [Fact]
    public void Together_they_cost_what_each_costs_alone() =>
        Gen.Select(RandomTariff.Timed.Array[1, 6], RandomTariff.Kwh(Grid.Count), RandomTariff.Kwh(Grid.Count)).Sample((tariffs, import, export) =>
        {
            BillingPlan[] plans = [.. tariffs.Select(t => TariffHistory.Of(t.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)).On(Grid, Dublin))];
            var together = BillingPlans.Of(plans).CostsBeforeRounding(import, export);
            for (var i = 0; i < plans.Length; i++)
            {
                Assert.Equal(plans[i].CostsBeforeRounding(import, export), together[i], Near);
                Assert.Equal(plans[i].Bills(import, export).Select(b => (double)b.Total.Amount), together[i], Near);
            }
        }, iter: 60);

    [Fact]
    public void Two_days_by_hand()
    {
        // 48 half hours of 1 kWh a day: 4 of them in the peak at 0.50, 44 at 0.20; a day costs 1.00 to be connected.
        var grid = new IntervalGrid(new LocalDate(2024, 6, 3).AtStartOfDayInZone(Dublin).ToInstant(), Duration.FromMinutes(30), 96);
        var tariff = Tariff.Named("By hand", "EUR", new LocalDate(2024, 1, 1)).SupplyPerDay(1).Import("peak", 0.50m, "17:00-19:00").Import("other", 0.20m);
        var kwh = Enumerable.Repeat(1.0, 96).ToArray();
        Assert.Equal(2 + (2 * ((4 * 0.50) + (44 * 0.20))), BillingPlans.Of(TariffHistory.Of(tariff).On(grid, Dublin)).CostsBeforeRounding(kwh, new double[96])[0][0], 9);
    }

    [Fact]
    public void A_tariff_that_needs_the_whole_bill_or_another_grid_is_refused()
    {
        var flat = TariffHistory.Of(Tariff.Flat("Flat", "EUR", 0.25m, from: new LocalDate(2020, 1, 1)));
        var discount = TariffHistory.Of(flat.Latest.With(new PercentCharge("discount", -0.1m, [])));
        Assert.Contains("that needs the whole bill", Assert.Throws<InvalidOperationException>(() => BillingPlans.Of(discount.On(Grid, Dublin))).Message, StringComparison.Ordinal);
        Assert.Contains("expected the same", Assert.Throws<ArgumentException>(() => BillingPlans.Of(flat.On(Grid, Dublin), flat.On(Grid with { Count = 48 }, Dublin))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => BillingPlans.Of());
    }

    [Fact]
    public void A_value_that_is_no_number_is_named()
    {
        var plans = BillingPlans.Of(TariffHistory.Of(Tariff.Flat("Flat", "EUR", 0.25m, from: new LocalDate(2020, 1, 1))).On(Grid, Dublin));
        var kwh = new double[Grid.Count];
        kwh[7] = double.NaN;
        Assert.Contains("interval 7", Assert.Throws<ArgumentException>(() => plans.CostsBeforeRounding(kwh, new double[Grid.Count])).Message, StringComparison.Ordinal);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Abs(a));
}
