namespace SolarEconomics.Tests;

/// <summary>By hand; no published example was found.</summary>
public sealed class WarrantyTests
{
    private static readonly Warranty Promise = new(Ageing.Linear(0.007).WithFirstYear(0.03), 25);

    [Fact]
    public void A_promise_holds_while_it_runs_and_then_no_more()
    {
        Assert.Equal(0.97 - (9 * 0.007), Promise.ShareAt(10)!.Value, 1e-12);
        Assert.Null(Promise.ShareAt(25));
    }

    [Fact]
    public void A_floor_is_the_promise_where_modules_fall_below_it()
    {
        var poor = Ageing.Linear(0.012);
        Assert.Equal(Promise.ShareAt(20)!.Value, Promise.Floor(poor, 20));
        Assert.Equal(poor.FactorAt(26), Promise.Floor(poor, 26));
        Assert.Equal(Ageing.Linear(0.001).FactorAt(20), Promise.Floor(Ageing.Linear(0.001), 20));
    }

    [Fact]
    public void The_first_claim_is_the_first_month_below_the_promise()
    {
        // By hand: 1 − 0.012 t < 0.977 − 0.007 t from t = 4.6 years on, so at 4 years and 8 months.
        Assert.Equal(56 / 12.0, Promise.FirstClaimYears(Ageing.Linear(0.012))!.Value, 1e-9);
        Assert.Null(Promise.FirstClaimYears(Ageing.PublishedMedian));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Warranty(Ageing.None, 0));
    }
}
