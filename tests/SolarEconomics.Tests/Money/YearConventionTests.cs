namespace SolarEconomics.Tests;

/// <summary>When in a year an amount falls: flows of money agree with plain numbers and refuse a rate of the other kind.</summary>
public sealed class YearConventionTests
{
    private static readonly double[] Amounts = [-100, 60, 60];
    private static readonly MoneyFlow Flow = MoneyFlow.Nominal(Currency.Of("EUR"), Amounts);

    [Fact]
    public void Year_ends_of_money_are_those_by_hand() // by hand: -100/1.1 + 60/1.21 + 60/1.331
    {
        var money = TimeValue.NpvOfYearEnds(Flow, Rate.Nominal(0.10));
        Assert.Equal(3.756574, (double)money.Amount, 6);
        Assert.Equal("EUR", money.Currency.Code);
        Assert.Equal(TimeValue.NpvOfYearEnds(Amounts, 0.10), (double)money.Amount, 9);
    }

    [Fact]
    public void Mid_years_of_money_are_those_by_hand() // by hand: -100 + 60/1.1^0.5 + 60/1.1^1.5 = -100 + 57.207755 + 52.007050
    {
        var money = TimeValue.NpvOfMidYears(Flow, Rate.Nominal(0.10));
        Assert.Equal(9.214806, (double)money.Amount, 6);
        Assert.Equal(TimeValue.NpvOfMidYears(Amounts, 0.10), (double)money.Amount, 9);
    }

    [Fact]
    public void A_real_rate_is_refused_for_money_of_the_day()
    {
        Assert.Throws<BasisMismatchException>(() => TimeValue.NpvOfYearEnds(Flow, Rate.Real(0.03)));
        Assert.Throws<BasisMismatchException>(() => TimeValue.NpvOfMidYears(Flow, Rate.Real(0.03)));
    }
}
