namespace SolarEconomics.Tests;

/// <summary>Values, rates of return and payback against published figures: the rows are in tests/data/published/rows-money.csv.</summary>
public sealed class PublishedMoneyTests
{
    [Theory, PublishedRows("npv")]
    public void Npv(string id) => Published.Check(id, r => TimeValue.Npv(r.Numbers("flow"), r.Number("rate")));

    [Theory, PublishedRows("npv-of-year-ends")]
    public void Npv_of_year_ends(string id) => Published.Check(id, r => TimeValue.NpvOfYearEnds(r.Numbers("flow"), r.Number("rate")));

    [Theory, PublishedRows("xnpv")]
    public void Xnpv(string id) => Published.Check(id, r => TimeValue.Xnpv(r.Numbers("flow"), r.Dates("dates"), r.Number("rate")));

    [Theory, PublishedRows("irr")]
    public void Irr(string id) => Published.Check(id, r => TimeValue.Irr(r.Numbers("flow")));

    [Theory, PublishedRows("xirr")]
    public void Xirr(string id) => Published.Check(id, r => TimeValue.Xirr(r.Numbers("flow"), r.Dates("dates")));

    [Theory, PublishedRows("mirr")]
    public void Mirr(string id) => Published.Check(id, r => TimeValue.Mirr(r.Numbers("flow"), r.Number("finance"), r.Number("reinvest")));

    [Theory, PublishedRows("simple-payback")]
    public void Simple_payback(string id) =>
        Published.Check(id, r => TimeValue.SimplePayback(r.Number("cost"), r.Number("saving")) ?? double.NaN);

    [Theory, PublishedRows("simple-payback-reciprocal")]
    public void Reciprocal_of_simple_payback_in_per_cent_a_year(string id) =>
        Published.Check(id, r => 100 / TimeValue.SimplePayback(r.Number("cost"), r.Number("saving")) ?? double.NaN);

    [Theory, PublishedRows("payback-first")]
    public void First_payback(string id) => Published.Check(id, r => TimeValue.Payback(r.Numbers("flow")).First ?? double.NaN);

    [Theory, PublishedRows("payback-lasting")]
    public void Lasting_payback(string id) => Published.Check(id, r => TimeValue.Payback(r.Numbers("flow")).Lasting ?? double.NaN);

    [Theory, PublishedRows("discounted-payback")]
    public void Discounted_payback(string id) =>
        Published.Check(id, r => TimeValue.DiscountedPayback(r.Numbers("flow"), r.Number("rate")).Lasting ?? double.NaN);

    [Theory, PublishedRows("discounted-sum")]
    public void Discounted_running_sum(string id) =>
        Published.Check(id, r => TimeValue.DiscountedPayback(r.Numbers("flow"), r.Number("rate")).RunningSums[r.Whole("year")]);

    [Theory, PublishedRows("real-rate")]
    public void Real_rate_in_per_cent(string id) =>
        Published.Check(id, r => 100 * TimeValue.RealRate(r.Number("nominal"), r.Number("inflation")));
}
