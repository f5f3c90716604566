namespace SolarEconomics.Tests;

/// <summary>Ageing against published figures: the rows are in tests/data/published/rows-ageing.csv.</summary>
public sealed class PublishedAgeingTests
{
    [Theory, PublishedRows("ageing-factor")]
    public void Factor_at_an_age(string id) => Published.Check(id, r =>
        (r.Text("rule") == "compound" ? Ageing.Compound(r.Number("loss")) : Ageing.Linear(r.Number("loss"))).FactorAt(r.Number("age")));

    [Theory, PublishedRows("ageing-years")]
    public void Energy_of_many_years(string id) => Published.Check(id, r => r.Number("first") * Years(r));

    [Theory, PublishedRows("ageing-years-share")]
    public void Energy_of_many_years_against_no_loss(string id) => Published.Check(id, r => Years(r) / r.Whole("years"));

    [Theory, PublishedRows("ageing-month")]
    public void Factor_after_a_month(string id) => Published.Check(id, r => Ageing.Compound(r.Number("loss")).FactorAt(1.0 / 12));

    [Theory, PublishedRows("ageing-month-starts")]
    public void Mean_of_the_first_twelve_month_starts(string id) => Published.Check(id, r =>
        Enumerable.Range(0, 12).Average(month => Ageing.Compound(r.Number("loss")).FactorAt(month / 12.0)));

    [Theory, PublishedRows("ageing-default")]
    public void The_default_is_the_published_median_in_per_cent(string id) =>
        Published.Check(id, _ => 100 * Ageing.PublishedMedian.LossPerYear);

    private static double Years(PublishedRow r) =>
        Enumerable.Range(1, r.Whole("years")).Sum(Ageing.Compound(r.Number("loss")).FactorOfYear);
}
