namespace SolarEconomics.Tests;

/// <summary>Life-cycle and levelised cost against published figures: the rows are in tests/data/published/rows-money.csv.</summary>
public sealed class PublishedLifeCycleTests
{
    private static readonly Currency Usd = Currency.Of("USD");

    [Theory, PublishedRows("growing-present-worth")]
    public void Growing_present_worth(string id) => Published.Check(id, r =>
        r.Number("first") * TimeValue.GrowingPresentWorth(r.Number("rate"), r.Number("growth"), r.Whole("years")));

    [Theory, PublishedRows("sir")]
    public void Sir(string id) => Published.Check(id, r => TimeValue.Sir(r.Numbers("savings"), r.Numbers("investments"), r.Number("rate")));

    [Theory, PublishedRows("net-savings")]
    public void Net_savings(string id) =>
        Published.Check(id, r => TimeValue.NetSavings(r.Numbers("savings"), r.Numbers("investments"), r.Number("rate")));

    [Theory, PublishedRows("present-savings")]
    public void Present_value_of_savings(string id) => Published.Check(id, r => TimeValue.Npv(r.Numbers("savings"), r.Number("rate")));

    [Theory, PublishedRows("present-investment")]
    public void Present_value_of_investment(string id) => Published.Check(id, r => TimeValue.Npv(r.Numbers("investments"), r.Number("rate")));

    [Theory, PublishedRows("airr")]
    public void Airr_in_per_cent(string id) => Published.Check(id, r => 100 * TimeValue.Airr(
        TimeValue.Sir(r.Numbers("savings"), r.Numbers("investments"), r.Number("rate")), r.Number("rate"), r.Whole("years")));

    [Theory, PublishedRows("discounted-energy")]
    public void Discounted_energy(string id) => Published.Check(id, r => TimeValue.Npv(Energy(r), r.Number("rate")));

    [Theory, PublishedRows("present-cost")]
    public void Present_cost(string id) => Published.Check(id, r => TimeValue.Npv(Costs(r), r.Number("rate")));

    [Theory, PublishedRows("lcoe")]
    public void Lcoe(string id) => Published.Check(id, r => TimeValue.Lcoe(Costs(r), Energy(r), r.Number("rate")));

    [Theory, PublishedRows("real-lcoe")]
    public void Real_lcoe(string id) => Published.Check(id, r =>
    {
        var nominal = MoneyFlow.Nominal(Usd, [.. Costs(r).Select(c => -c)]);
        var (real, rate) = (nominal.ToReal(2026, r.Number("escalation")), Rate.Nominal(r.Number("rate")).ToReal(r.Number("escalation")));
        return TimeValue.Lcoe(real, Energy(r), rate, EnergyCounted.GeneratedAc).PerKwh.Amount;
    });

    [Theory, PublishedRows("life-cycle-cost")]
    public void Life_cycle_cost(string id) => Published.Check(id, r =>
    {
        var years = r.Whole("years");
        var cost = TimeValue.LifeCycleCost(Rate.Real(r.Number("rate")), years,
            ("investment", Flow(years, (0, -10_000), (years, 1_000))),
            ("upkeep", Flow(years, [.. Enumerable.Range(1, years).Select(y => (y, -200.0))])),
            ("replacement", Flow(years, (8, -2_000))),
            ("energy", Flow(years, [.. Enumerable.Range(1, years).Select(y => (y, -900.0))])));
        return r.Text("part") switch
        {
            "total" => cost.Total.Amount,
            "per-year" => cost.PerYear.Amount,
            var part => cost.Parts.Single(p => p.Name == part).PresentCost.Amount,
        };
    });

    private static MoneyFlow Flow(int years, params (int Year, double Amount)[] amounts)
    {
        var flow = new double[years + 1];
        foreach (var (year, amount) in amounts) flow[year] += amount;
        return MoneyFlow.Of(PriceBasis.RealOf(2026), Usd, flow);
    }

    /// <summary>Cost now, then upkeep at year ends in today's money, grown by the escalation.</summary>
    private static double[] Costs(PublishedRow r) =>
        [r.Number("cost"), .. Enumerable.Range(1, r.Whole("years")).Select(y => r.Number("upkeep") * Math.Pow(1 + r.Number("escalation"), y))];

    private static double[] Energy(PublishedRow r) =>
        [0, .. Enumerable.Range(1, r.Whole("years")).Select(y => r.Number("first") * Ageing.Compound(r.Number("loss")).FactorOfYear(y))];
}
