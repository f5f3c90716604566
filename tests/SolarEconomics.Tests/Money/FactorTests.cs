using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>Interest factors against naive sums, near rate 0 too. Published tables are in PublishedLoanTests.</summary>
public sealed class FactorTests
{
    private static readonly Gen<(double Rate, int Years)> Cases = Gen.Select(Gen.OneOf(Gen.Double[-0.3, 0.6], Gen.Double[-1e-9, 1e-9], Gen.Const(0.0)), Gen.Int[1, 60]);

    [Fact]
    public void Uniform_present_worth_is_the_sum_of_its_years() => Cases.Sample((rate, years) =>
        Near(Naive.SumOf(years, k => Math.Pow(1 + rate, -k)), TimeValue.UniformPresentWorth(rate, years)));

    [Fact]
    public void Uniform_compound_amount_is_the_sum_of_its_years() => Cases.Sample((rate, years) =>
        Near(Naive.SumOf(years, k => Math.Pow(1 + rate, years - k)), TimeValue.UniformCompoundAmount(rate, years)));

    [Fact]
    public void Gradient_present_worth_is_the_sum_of_its_years() => Cases.Sample((rate, years) =>
        Near(Naive.SumOf(years, k => (k - 1) * Math.Pow(1 + rate, -k)), TimeValue.GradientPresentWorth(rate, years)));

    [Fact]
    public void Growing_present_worth_is_the_sum_of_its_years_even_where_growth_is_the_rate() =>
        Gen.Select(Cases, Gen.OneOf(Gen.Double[-0.2, 0.3], Gen.Const(double.NaN))).Sample((c, g) =>
        {
            var growth = double.IsNaN(g) ? c.Rate : g;
            return Near(Naive.SumOf(c.Years, k => Math.Pow(1 + growth, k - 1) * Math.Pow(1 + c.Rate, -k)), TimeValue.GrowingPresentWorth(c.Rate, growth, c.Years))
                && Near(Naive.SumOf(c.Years, k => Math.Pow((1 + growth) / (1 + c.Rate), k)), TimeValue.EscalatedPresentWorth(c.Rate, growth, c.Years));
        });

    [Fact]
    public void Factors_that_undo_each_other_multiply_to_1() => Cases.Sample((rate, years) =>
        Near(1, TimeValue.SinglePresentWorth(rate, years) * TimeValue.CompoundAmount(rate, years))
        && Near(1, TimeValue.CapitalRecovery(rate, years) * TimeValue.UniformPresentWorth(rate, years))
        && Near(1, TimeValue.SinkingFund(rate, years) * TimeValue.UniformCompoundAmount(rate, years))
        && Near(TimeValue.GradientPresentWorth(rate, years), TimeValue.GradientUniform(rate, years) * TimeValue.UniformPresentWorth(rate, years)));

    [Fact]
    public void A_long_growing_amount_comes_near_the_perpetuity() => // closed form 1/(r - g)
        Assert.Equal(TimeValue.PerpetuityPresentWorth(0.08, 0.03), TimeValue.GrowingPresentWorth(0.08, 0.03, 1000), 9);

    [Fact]
    public void An_amount_that_grows_as_fast_as_the_rate_has_no_end() =>
        Assert.StartsWith("Found growth of 5 % a year and a rate of 5 %, expected growth below the rate: the sum of all years has no end.",
            Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.PerpetuityPresentWorth(0.05, 0.05)).Message);

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(1001)]
    public void A_life_that_is_none_is_refused(int years) =>
        Assert.StartsWith(FormattableString.Invariant($"Found a life of {years} years, expected a whole number from 1 to 1,000."),
            Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.CapitalRecovery(0.05, years)).Message);

    [Fact]
    public void Real_and_nominal_rates_undo_each_other() =>
        Gen.Select(Gen.Double[-0.2, 0.4], Gen.Double[-0.1, 0.4]).Sample((real, inflation) =>
            Near(1 + real, 1 + TimeValue.RealRate(TimeValue.NominalRate(real, inflation), inflation)));

    [Fact]
    public void Six_per_cent_quoted_monthly_is_6_17_per_cent_effective() // by hand: 1.005^12 - 1
    {
        var rate = Rate.Quoted(0.06, 12);
        Assert.Equal(0.0616778, rate.PerYear, 7);
        Assert.Equal(0.005, rate.PerPeriod(12), 12);
    }

    private static bool Near(double expected, double got) => Math.Abs(expected - got) <= 1e-9 * Math.Max(1, Math.Abs(expected));
}
