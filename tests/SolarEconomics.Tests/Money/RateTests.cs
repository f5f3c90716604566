namespace SolarEconomics.Tests;

/// <summary>What a rate and a flow of money refuse, and how they say themselves.</summary>
public sealed class RateTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    [Fact]
    public void A_rate_says_whether_it_is_nominal_or_real()
    {
        Assert.Equal("5.00 % a year, nominal", Rate.Nominal(0.05).ToString());
        Assert.Equal("3.00 % a year, real", Rate.RealPercent(3).ToString());
        Assert.Equal("0.00 % a year, nominal", default(Rate).ToString());
    }

    [Fact]
    public void Inflation_is_taken_out_and_put_in_once()
    {
        var real = Rate.Nominal(0.0712).ToReal(0.04); // by hand: 1.0712 / 1.04 = 1.03
        Assert.Equal(0.03, real.PerYear, 12);
        Assert.Equal(0.0712, real.ToNominal(0.04).PerYear, 12);
        Assert.Equal("Found 3.00 % a year, real, expected a nominal rate: inflation was taken out already.",
            Assert.Throws<BasisMismatchException>(() => real.ToReal(0.04)).Message);
        Assert.Equal("Found 5.00 % a year, nominal, expected a real rate: inflation is in it already.",
            Assert.Throws<BasisMismatchException>(() => Rate.Nominal(0.05).ToNominal(0.02)).Message);
    }

    [Theory]
    [InlineData(-100)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_rate_in_per_cent_is_a_finite_number_above_minus_100(double percent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Rate.NominalPercent(percent));

    [Fact]
    public void Flows_add_year_by_year_and_the_shorter_one_counts_as_nothing_after_its_end()
    {
        var sum = MoneyFlow.Nominal(Eur, -100, 10) + MoneyFlow.Nominal(Eur, 1, 2, 3);
        Assert.Equal([-99, 12, 3], sum.Amounts);
        Assert.Equal(Money.Nominal(3, Eur), sum[2]);
        Assert.Equal(2, sum.LastYear);
        Assert.Equal("years 0 to 2, EUR, nominal", sum.ToString());
    }

    [Fact]
    public void Flows_of_two_currencies_or_bases_do_not_mix()
    {
        var mixed = Assert.Throws<MixedMoneyException>(() => MoneyFlow.Nominal(Eur, 1) - MoneyFlow.Nominal(Currency.Of("USD"), 1));
        Assert.Equal("Found a flow in EUR nominal together with one in USD nominal, expected one currency and one price basis. Convert one of them first.", mixed.Message);
        Assert.Throws<MixedMoneyException>(() => MoneyFlow.Nominal(Eur, 1) + MoneyFlow.Of(PriceBasis.RealOf(2026), Eur, 1));
    }

    [Fact]
    public void A_flow_of_nothing_or_with_a_hole_is_refused()
    {
        Assert.Equal("Found a flow of no amounts, expected at least one.", Assert.Throws<ArgumentException>(() => MoneyFlow.Nominal(Eur)).Message);
        Assert.StartsWith("Found NaN at place 1 (counted from 0), expected finite numbers.",
            Assert.Throws<ArgumentOutOfRangeException>(() => MoneyFlow.Nominal(Eur, 1, double.NaN)).Message);
    }

    [Fact]
    public void A_flow_is_made_real_once()
    {
        var real = MoneyFlow.Nominal(Eur, 100, 104).ToReal(2026, 0.04);
        Assert.Equal([100, 100], real.Amounts.Select(a => Math.Round(a, 10)));
        Assert.Equal(PriceBasis.RealOf(2026), real.Basis);
        Assert.Equal([100, 104], real.ToNominal(0.04).Amounts.Select(a => Math.Round(a, 10)));
        Assert.Equal("Found a flow that is real 2026 already. Convert it once only.", Assert.Throws<BasisMismatchException>(() => real.ToReal(2026, 0.04)).Message);
    }

    [Fact]
    public void A_payment_joins_a_dated_flow_in_its_place()
    {
        var flow = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new(new(2021, 1, 1), -100), new(new(2023, 1, 1), 110)]);
        Assert.Equal([-100m, 5m, 110m], flow.With(new(2022, 1, 1), Money.Nominal(5, Eur)).Amounts.Select(a => a.Amount));
        Assert.Equal(10m, flow.Total.Amount);
        Assert.Throws<MixedMoneyException>(() => flow.With(new(2022, 1, 1), Money.Nominal(5, Currency.Of("GBP"))));
    }
}
