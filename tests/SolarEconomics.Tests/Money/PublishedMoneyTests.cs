namespace SolarEconomics.Tests;

/// <summary>Time value against published values: the rows are in tests/data/published/rows-money.csv.</summary>
public sealed class PublishedMoneyTests
{
    [Theory, PublishedRows("npv")]
    public void Npv(string id) => Published.Check(id, r => TimeValue.Npv(r.Numbers("flow"), r.Number("rate")));

    [Theory, PublishedRows("xnpv")]
    public void Xnpv(string id) => Published.Check(id, r => TimeValue.Xnpv(r.Numbers("flow"), r.Dates("dates"), r.Number("rate")));

    [Theory, PublishedRows("xirr")]
    public void Xirr(string id) => Published.Check(id, r => TimeValue.Xirr(r.Numbers("flow"), r.Dates("dates")));

    [Theory, PublishedRows("discounted-payback")]
    public void Discounted_payback(string id) =>
        Published.Check(id, r => TimeValue.DiscountedPayback(r.Numbers("flow"), r.Number("rate")).Lasting ?? double.NaN);
}
