namespace SolarEconomics.Tests;

/// <summary>A range of money, open above where the records tell no upper end.</summary>
public sealed class MoneyRangeTests
{
    private static readonly MoneyRange Open = new(Eur(10), null);
    private static readonly MoneyRange Closed = new(Eur(20), Eur(30));

    [Fact]
    public void A_range_holds_both_its_ends_and_nothing_beyond()
    {
        Assert.Equal([false, true, true, true, false], new[] { 19.99m, 20, 25, 30, 30.01m }.Select(a => Closed.Contains(Eur(a))));
        Assert.Equal([false, true, true], new[] { 9.99m, 10, 1e9m }.Select(a => Open.Contains(Eur(a))));
    }

    [Fact]
    public void Width_and_middle_are_known_where_both_ends_are()
    {
        Assert.Equal((Eur(10), Eur(25)), (Closed.Width, Closed.Middle));
        Assert.Equal((null, null), (Open.Width, Open.Middle));
        Assert.Equal((Eur(0), Eur(7)), (MoneyRange.Exactly(Eur(7)).Width, MoneyRange.Exactly(Eur(7)).Middle));
    }

    [Fact]
    public void Two_ranges_together_allow_what_both_allow()
    {
        Assert.Equal(Closed, Open.Within(Closed));
        Assert.Equal(Closed, Closed.Within(Open));
        Assert.Equal(new MoneyRange(Eur(20), Eur(28)), Closed.Within(new MoneyRange(Eur(5), Eur(28))));
        Assert.Equal(new MoneyRange(Eur(22), Eur(30)), Closed.Within(new MoneyRange(Eur(22), Eur(40))));
        Assert.Equal(new MoneyRange(Eur(12), null), Open.Within(new MoneyRange(Eur(12), null)));
    }

    private static Money Eur(decimal amount) => Money.Nominal(amount, Currency.Of("EUR"));
}
