using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>Amounts as people of a culture write them. Expected: common practice, no source.</summary>
public class CurrencySignTests
{
    [Theory]
    [InlineData("EUR", "", "€1,234")]
    [InlineData("EUR", "en-IE", "€1,234")]
    [InlineData("EUR", "de-DE", "1.234 €")]
    [InlineData("EUR", "nl-NL", "€ 1.234")]
    [InlineData("USD", "en-US", "US$1,234")]
    [InlineData("AUD", "en-AU", "A$1,234")]
    [InlineData("CHF", "", "CHF 1,234")]
    [InlineData("CHF", "de-DE", "1.234 CHF")]
    [InlineData("ZAR", "", "R 1,234")]
    public void The_sign_stands_where_the_culture_has_it(string code, string culture, string written)
    {
        var money = Money.Nominal(1_234, Currency.Of(code));
        var people = CultureInfo.GetCultureInfo(culture);
        Assert.Equal(written, Wording.Whole(money, people).Replace('\u00a0', ' '));
        Assert.Equal("+" + written, Wording.Signed(money, people).Replace('\u00a0', ' '));
        Assert.Equal("−" + written, Wording.Whole(-money, people).Replace('\u00a0', ' '));
        // No line ends between a number and its currency.
        Assert.DoesNotContain(' ', Wording.Whole(money, people));
    }

    [Fact]
    public void Coins_and_prices_keep_the_side_of_the_sign()
    {
        var german = CultureInfo.GetCultureInfo("de-DE");
        Assert.Equal("0,50\u00a0€", Wording.Exact(Money.Nominal(0.5m, Currency.Of("EUR")), german));
        Assert.Equal("0,3124\u00a0€", Wording.Price(Money.Nominal(0.3124m, Currency.Of("EUR")), german));
        Assert.Equal("1.234\u00a0¥", Wording.Exact(Money.Nominal(1_234, Currency.Of("JPY")), german));
    }

    [Fact]
    public void Every_currency_has_a_sign_and_shared_ones_are_told_apart()
    {
        Assert.Equal("", default(Currency).Sign);
        var signs = new[] { "USD", "AUD", "CAD", "NZD", "EUR", "GBP", "INR", "JPY", "ZAR", "CHF", "MXN" }.Select(c => Currency.Of(c).Sign).ToList();
        Assert.Equal(signs.Count, signs.Distinct().Count());
        Assert.Equal("MXN", Currency.Of("MXN").Sign);
        Assert.Throws<ArgumentNullException>(() => Currency.Of("EUR").SignAround(null!));
    }
}
