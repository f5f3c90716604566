using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Money of the day in the money of a year. By hand and by property; no published example: an index is a ratio of two numbers.</summary>
public sealed class PriceIndexTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    /// <summary>100 all through 2022, 110 all through 2023.</summary>
    private static readonly PriceIndex Index = PriceIndex.Of(
        from year in new[] { 2022, 2023 } from month in Enumerable.Range(1, 12) select (new YearMonth(year, month), year == 2022 ? 100.0 : 110.0));

    [Fact]
    public void A_hundred_of_2022_is_a_hundred_and_ten_of_2023()
    {
        var real = Index.ToMoneyOf(Money.Nominal(100, Eur), new LocalDate(2022, 5, 17), 2023);
        Assert.Equal(new Money(110, Eur, PriceBasis.RealOf(2023)), real with { Amount = Math.Round(real.Amount, 10) });
    }

    [Fact]
    public void A_real_rate_of_the_flow_agrees_with_fisher()
    {
        // Prices rise 10 % between the payments, so 21 % nominal is 10 % real.
        var nominal = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new(new(2022, 3, 1), -100), new(new(2023, 3, 1), 121)]);
        var rate = TimeValue.Xirr(Index.ToMoneyOf(nominal, 2023));
        Assert.True(rate.IsReal);
        Assert.Equal(TimeValue.Xirr(nominal).ToReal(0.10).PerYear, rate.PerYear, 10);
    }

    [Fact]
    public void A_month_that_is_not_there_is_not_made_up() =>
        Assert.StartsWith("Found no price level for 2024-01 in an index from 2022-01 to 2023-12, expected one for every month that is paid in",
            Assert.Throws<ArgumentOutOfRangeException>(() => Index.ToMoneyOf(Money.Nominal(100, Eur), new LocalDate(2024, 1, 1), 2023)).Message);

    [Fact]
    public void Real_money_is_not_converted_again() =>
        Assert.Throws<BasisMismatchException>(() => Index.ToMoneyOf(new Money(1, Eur, PriceBasis.RealOf(2022)), new LocalDate(2022, 1, 1), 2023));

    [Fact]
    public void A_file_reads_with_remarks_and_in_any_order()
    {
        var index = Read("# invented\nmonth,index\n2022-02,101.5\n2022-01,100\n");
        Assert.Equal(101.5, index.Level(new YearMonth(2022, 2)));
        Assert.Equal(new YearMonth(2022, 1), index.First);
    }

    [Theory]
    [InlineData("", "cpi.csv: found no months, expected a heading line month,index and a line for each month.")]
    [InlineData("date,index\n2022-01,100\n", "cpi.csv: found the heading \"date,index\", expected month,index.")]
    [InlineData("month,index\n2022-13,100\n", "cpi.csv, line 2, column 1: found month \"2022-13\", expected a month written as 2024-03.")]
    [InlineData("month,index\n2022-01,0\n", "cpi.csv, line 2, column 2: found index \"0\", expected a number above 0 with a point, such as 121.4.")]
    [InlineData("month,index\n2022-01,1\n2022-01,2\n", "cpi.csv, line 3, column 1: found month \"2022-01\", expected each month once.")]
    public void A_bad_index_gives_one_clear_message(string text, string message) =>
        Assert.Equal(message, Assert.Throws<RecordException>(() => Read(text)).Message);

    private static PriceIndex Read(string text) => PriceIndex.Read(new StringReader(text), "cpi.csv");
}
