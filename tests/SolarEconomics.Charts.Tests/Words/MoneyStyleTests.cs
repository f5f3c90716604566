using System.Globalization;

namespace SolarEconomics.Charts.Tests;

public sealed class MoneyStyleTests
{
    [Theory]
    [InlineData(14213.4, "EUR", "", "€14,213")]
    [InlineData(-3210, "EUR", "", "−€3,210")]
    [InlineData(4.126, "EUR", "", "€4.13")]
    [InlineData(-0.004, "EUR", "", "€0")]
    [InlineData(0, "EUR", "", "€0")]
    [InlineData(14213.4, "EUR", "de-DE", "14.213 €")]
    [InlineData(-14213.4, "EUR", "tr-TR", "−€14.213")]
    [InlineData(99, "JPY", "", "¥99")]
    [InlineData(1234, "CHF", "", "CHF 1,234")]
    [InlineData(1234, "USD", "", "US$1,234")]
    public void Money_is_written_with_sign_groups_and_currency(decimal amount, string currency, string culture, string expected) =>
        Assert.Equal(expected, Alone(Money.Nominal(amount, Currency.Of(currency)), culture).Replace('\u00a0', ' '));

    [Fact]
    public void A_change_shows_its_sign_on_both_sides_of_zero()
    {
        Assert.Equal("+€520", MoneyStyle.For([CashSamples.Euros(520)], CultureInfo.InvariantCulture).Change(CashSamples.Euros(520)));
        Assert.Equal("−€520", MoneyStyle.For([CashSamples.Euros(520)], CultureInfo.InvariantCulture).Change(CashSamples.Euros(-520)));
        Assert.Equal("€0", MoneyStyle.For([CashSamples.Euros(520)], CultureInfo.InvariantCulture).Change(CashSamples.Euros(0)));
    }

    [Fact]
    public void Amounts_of_one_table_are_written_alike()
    {
        var style = MoneyStyle.For([CashSamples.Euros(70.26), CashSamples.Euros(106)], CultureInfo.InvariantCulture);
        Assert.Equal("€70", style.Write(CashSamples.Euros(70.26)));
        Assert.Equal("€106", style.Write(CashSamples.Euros(106)));
    }

    private static string Alone(Money money, string culture) => MoneyStyle.For([money], CultureInfo.GetCultureInfo(culture)).Write(money);
}
