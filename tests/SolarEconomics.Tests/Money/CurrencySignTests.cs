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

    [Theory]
    [InlineData(0, "€5", "CHF 5")]
    [InlineData(1, "5€", "5 CHF")]
    [InlineData(2, "€ 5", "CHF 5")]
    [InlineData(3, "5 €", "5 CHF")]
    public void Each_of_the_four_places_is_kept(int pattern, string euros, string francs) // the four are those of .NET's CurrencyPositivePattern; a code always has its blank
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.CurrencyPositivePattern = pattern;
        Assert.Equal(euros, Wording.Whole(Money.Nominal(5, Currency.Of("EUR")), culture).Replace('\u00a0', ' '));
        Assert.Equal(francs, Wording.Whole(Money.Nominal(5, Currency.Of("CHF")), culture).Replace('\u00a0', ' '));
        Assert.Equal(("", ""), default(Currency).SignAround(culture));
    }

    [Fact]
    public void Signs_are_those_in_use_and_shared_ones_are_told_apart()
    {
        string[] codes = ["EUR", "GBP", "INR", "JPY", "USD", "AUD", "CAD", "NZD", "ZAR", "CHF", "MXN"];
        Assert.Equal(["€", "£", "₹", "¥", "US$", "A$", "C$", "NZ$", "R", "CHF", "MXN"], codes.Select(c => Currency.Of(c).Sign));
        Assert.Equal("", default(Currency).Sign);
        Assert.Equal("culture", Assert.Throws<ArgumentNullException>(() => Currency.Of("EUR").SignAround(null!)).ParamName);
    }
}
