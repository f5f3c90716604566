using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What people get wrong about money: each has one message of its own, with file and line where it came from a file.</summary>
public sealed class BadMoneyTests
{
    private static readonly WorthToDate Worth = YearSite.Worth();

    [Theory]
    [InlineData(5, "Found a rate of 5, expected a fraction a year from -0.5 to 1. If you mean 5 %, write 0.05.")]
    [InlineData(-3, "Found a rate of -3, expected a fraction a year from -0.5 to 1. If you mean -3 %, write -0.03.")]
    [InlineData(double.NaN, "Found a rate of NaN, expected a fraction a year from -0.5 to 1. 5 % a year is written 0.05.")]
    [InlineData(double.PositiveInfinity, "Found a rate of Infinity, expected a fraction a year from -0.5 to 1. 5 % a year is written 0.05.")]
    public void A_rate_that_is_none_is_asked_back_and_not_guessed(double rate, string message)
    {
        foreach (var a in new[] { YearSite.Plain with { DiscountRate = rate }, YearSite.Plain with { PriceGrowth = rate }, YearSite.Plain with { CostGrowth = rate } })
            Assert.StartsWith(message, Assert.Throws<ArgumentOutOfRangeException>(() => Worth.Outlook(a)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Receipts_in_two_currencies_are_named_with_file_and_line()
    {
        var ledger = Ledger.Read(new StringReader("date,kind,amount,currency\n2023-01-10,purchase,1000,EUR\n2023-02-10,part,20,GBP\n"), "ledger.csv");
        var e = Assert.Throws<MixedMoneyException>(() => ledger.CashFlows());
        Assert.Contains("ledger.csv, line 2", e.Message, StringComparison.Ordinal);
        Assert.Contains("ledger.csv, line 3", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flow_out_of_order_names_both_days()
    {
        var e = Assert.Throws<ArgumentException>(() => DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal,
            [new DatedAmount(new LocalDate(2024, 5, 1), -1) { Origin = "ledger.csv, line 4" }, new DatedAmount(new LocalDate(2024, 4, 1), 2) { Origin = "ledger.csv, line 5" }]));
        Assert.Contains("ledger.csv, line 5", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ledger_without_a_purchase_says_that_payback_starts_from_one() => Assert.Contains("purchase",
        Assert.Throws<RecordException>(() => Ledger.Read(new StringReader("date,kind,amount,currency\n2023-01-10,grant,1000,EUR\n"), "ledger.csv")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_flow_without_anything_paid_has_no_rate_and_says_so()
    {
        Assert.False(TimeValue.TryIrr([10, 20, 30], out var none));
        Assert.Equal(SolveEnd.NoSignChange, none.End);
    }

    [Fact]
    public void A_negative_year_of_replacement_is_refused_with_its_part() => Assert.Contains("for inverter",
        Assert.Throws<ArgumentOutOfRangeException>(() => Worth.Outlook(YearSite.Plain with { Replacements = [new Replacement("inverter", -2, 400)] })).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    [InlineData(double.NaN)]
    public void A_life_that_is_not_above_0_is_refused(double mean) => Assert.Throws<ArgumentOutOfRangeException>(() => WeibullDistribution.OfMean(mean, 3));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_number_that_is_none_never_becomes_a_distribution(double value)
    {
        Assert.ThrowsAny<ArgumentException>(() => Certain.Of(value));
        Assert.ThrowsAny<ArgumentException>(() => new NormalDistribution(0, value));
        Assert.ThrowsAny<ArgumentException>(() => new NormalDistribution(value, 1));
        Assert.ThrowsAny<ArgumentException>(() => new LognormalDistribution(value, 1));
        Assert.ThrowsAny<ArgumentException>(() => new UniformDistribution(value, 1));
        Assert.ThrowsAny<ArgumentException>(() => new TriangularDistribution(0, value, 1));
        Assert.ThrowsAny<ArgumentException>(() => DiscreteDistribution.Of((value, 1)));
        Assert.ThrowsAny<ArgumentException>(() => new WeibullDistribution(value, 1));
    }

    [Fact]
    public void Growth_that_makes_numbers_that_are_no_money_is_said_and_does_not_overflow()
    {
        var e = Assert.Throws<OverflowException>(() => Worth.Outlook(YearSite.Plain with
        {
            Years = 60, PriceSteps = [.. Enumerable.Range(0, 40).Select(y => new PriceStep(new LocalDate(2024, 1, 1).PlusYears(y), 10))],
        }));
        Assert.StartsWith("Found an amount of", e.Message, StringComparison.Ordinal);
    }
}
