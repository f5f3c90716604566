using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Columns of a plan that do not fit its grid or hold no number are refused by their name.</summary>
public sealed class PlanColumnTests
{
    private static readonly BillingPlan s_plan = TariffHistory.Of(Tariff.Flat("Plain", "EUR", 0.30m, supplyPerDay: 1, exportPerKwh: 0.10m, from: new LocalDate(2024, 1, 1)))
        .On(new IntervalGrid(Instant.FromUtc(2024, 4, 1, 0, 0), Duration.FromHours(1), 48), DateTimeZone.Utc);

    private static readonly MeteredEnergy s_energy = new(new double[48], new double[48]);

    public static TheoryData<string, Func<double[], MeteredEnergy>> Columns => new()
    {
        { "ImportKwh", column => new MeteredEnergy(column, new double[48]) },
        { "ExportKwh", column => new MeteredEnergy(new double[48], column) },
        { "ControlledLoadKwh", column => s_energy with { ControlledLoadKwh = column } },
        { "CurtailedKwh", column => s_energy with { CurtailedKwh = column } },
        { "ReactiveKvarh", column => s_energy with { ReactiveKvarh = column } },
        { "UseKwh", column => s_energy with { UseKwh = column } },
        { "GenerationKwh", column => s_energy with { GenerationKwh = column } },
    };

    [Theory]
    [MemberData(nameof(Columns))]
    public void A_column_of_another_length_or_without_a_number_is_named(string name, Func<double[], MeteredEnergy> with)
    {
        Assert.NotEmpty(s_plan.Bills(with(new double[48])));
        Assert.StartsWith($"Found 47 values of {name}, expected 48, one for each interval of the plan's grid.", Refusal(() => s_plan.Bills(with(new double[47]))), StringComparison.Ordinal);
        foreach (var at in new[] { 0, 30, 47 })
        {
            var bad = new double[48];
            bad[at] = double.NaN;
            Assert.StartsWith($"Found no finite number in {name} at interval {at}, expected kWh.", Refusal(() => s_plan.Bills(with(bad))), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Costs_and_bills_of_two_columns_refuse_the_same()
    {
        var (good, bad) = (new double[48], new double[48]);
        bad[7] = double.PositiveInfinity;
        foreach (var ask in new Action<double[], double[]>[] { (i, e) => s_plan.Bills(i, e), (i, e) => s_plan.CostsBeforeRounding(i, e) })
        {
            Assert.StartsWith("Found 3 values of importKwh, expected 48", Refusal(() => ask(new double[3], good)), StringComparison.Ordinal);
            Assert.StartsWith("Found 3 values of exportKwh, expected 48", Refusal(() => ask(good, new double[3])), StringComparison.Ordinal);
            Assert.StartsWith("Found no finite number in importKwh at interval 7", Refusal(() => ask(bad, good)), StringComparison.Ordinal);
            Assert.StartsWith("Found no finite number in exportKwh at interval 7", Refusal(() => ask(good, bad)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(40)]
    public void A_sum_by_price_is_the_naive_one_for_few_and_for_many_prices(int prices)
    {
        double[] rates = [.. Enumerable.Range(0, prices).Select(p => 0.1 + (0.01 * p))];
        foreach (var count in new[] { 0, 3, 4, 8, 16, 17, 100 })
        {
            double[] kwh = [.. Enumerable.Range(0, count).Select(i => 1.0 + i)];
            byte[] bands = [.. Enumerable.Range(0, count).Select(i => (byte)(i * 7 % prices))];
            Assert.Equal(Enumerable.Range(0, count).Sum(i => kwh[i] * rates[bands[i]]), BandCosts.Sum(kwh, bands, rates), 1e-9);
        }
    }

    [Fact]
    public void The_billed_days_hold_each_interval_once()
    {
        var days = s_plan.BilledDays();
        Assert.Equal([(0, 24, 0), (24, 24, 0)], days.Select(d => (d.First, d.Count, d.Period)));
        Assert.Equal(Enumerable.Repeat("import", 48), TariffHistory.Of(Tariff.Named("only supply", "EUR", new LocalDate(2024, 1, 1)).SupplyPerDay(1)).On(s_plan.Grid, DateTimeZone.Utc).ImportRates());
        var timed = TariffHistory.Of(Tariff.Named("timed", "EUR", new LocalDate(2024, 1, 1)).Import("night", 0.1m, "00:00-06:00").Import("day", 0.3m)).On(s_plan.Grid, DateTimeZone.Utc);
        Assert.Equal(Enumerable.Range(0, 48).Select(h => h % 24 < 6 ? "night" : "day"), timed.ImportRates());
    }

    private static string Refusal(Action ask) => Assert.ThrowsAny<ArgumentException>(ask).Message;
}
