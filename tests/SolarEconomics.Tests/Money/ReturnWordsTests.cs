using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What rates of return and paybacks say of themselves, in each way a search can end.</summary>
public sealed class ReturnWordsTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    [Theory]
    [InlineData(new double[] { -100, 110 }, "10.00 %", "a year, inflation included, is the rate at which what is paid and what comes back are worth the same.")]
    [InlineData(new double[] { -100, 250, -154 }, "10.00 %, 40.00 %", "a year are all rates of return of this flow, so none of them ranks it: compare net present values at a rate of your own, or take the modified rate of return.")]
    [InlineData(new double[] { 100, 110 }, "No rate", "of return: there is no payment, or nothing comes back. Check that year 0 holds the cost, as a negative amount.")]
    [InlineData(new double[] { -100, 100, -100 }, "No rate", "of return: at no rate above -100 % a year is what is paid worth what comes back. Compare net present values at a rate of your own.")]
    public void A_rate_of_return_says_how_the_search_ended(double[] flow, string figure, string words)
    {
        TimeValue.TryIrr(flow, out var result);
        var finding = result.Say(CultureInfo.InvariantCulture);
        Assert.Equal((figure, words), (finding.Figure, finding.Words));
        Assert.Equal($"The sign of the flow changes {result.SignChanges} {(result.SignChanges == 1 ? "time" : "times")}: never fewer than there are rates.", finding.Notes[0]);
        Assert.Contains("rank options by their net present value", Assert.Single(finding.Cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_of_real_money_says_that_inflation_is_out_of_it()
    {
        TimeValue.TryIrr(MoneyFlow.Of(PriceBasis.RealOf(2026), Eur, -100, 110), out var result);
        Assert.StartsWith("a year, without inflation,", result.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new double[] { -100, 40, 40, 40 }, "2.5 years", "until what was paid has come back; the sum after 3 years is 20.00.")]
    [InlineData(new double[] { -100, 40, 40, 10 }, "Not paid back", "within 3 years: the sum after the last is −10.00.")]
    [InlineData(new double[] { -100, 100, -50, 20 }, "Not paid back for good", "within 3 years: the sum reaches 0 after 1.0 years, falls below it again, and is −30.00 after the last.")]
    [InlineData(new double[] { -100, 100, -50, 100 }, "2.5 years", "until what was paid has come back for good. It reaches 0 first after 1.0 years and falls below again; after 3 years the sum is 50.00.")]
    public void A_payback_says_first_lasting_and_never(double[] flow, string figure, string words)
    {
        var finding = TimeValue.Payback(flow).Say(CultureInfo.InvariantCulture);
        Assert.Equal((figure, words), (finding.Figure, finding.Words));
        Assert.Equal(flow.Length, Assert.Single(finding.Tables).Rows.Count);
    }

    [Theory]
    [InlineData(new[] { -100, 60, 60 }, "1 Mar 2024", "is the day on which what was paid has come back; the sum after the last payment is €20.00.")]
    [InlineData(new[] { -100, 60, 30 }, "Not paid back", "The sum after the last payment is −€10.00.")]
    [InlineData(new[] { -100, 110, -30 }, "Not paid back for good", "The sum reaches 0 on 1 Feb 2024, falls below it again, and is −€20.00 after the last payment.")]
    [InlineData(new[] { -100, 110, -30, 40 }, "1 Apr 2024", "is the day from which on what was paid has come back for good. It had come back first on 1 Feb 2024; the sum after the last payment is €20.00.")]
    public void A_payback_of_dated_payments_says_its_days(int[] amounts, string figure, string words)
    {
        var flow = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, amounts.Select((a, i) => new DatedAmount(new LocalDate(2024, 1 + i, 1), a)));
        var finding = TimeValue.Payback(flow).Say(CultureInfo.InvariantCulture);
        Assert.Equal((figure, words), (finding.Figure, finding.Words));
    }
}
