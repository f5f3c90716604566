using CsCheck;

namespace SolarEconomics.Tests.StatisticsRoom;

// Oracles: closed forms by hand; a naive mean over many quantiles; properties. Published rows for normal, lognormal and triangular stand in StatisticsRowsTests.
public sealed class DistributionTests
{
    public static TheoryData<IDistribution> All =>
    [
        new NormalDistribution(5, 2), new LognormalDistribution(0.5, 0.4), new TriangularDistribution(1, 2, 6), new UniformDistribution(-1, 3),
        DiscreteDistribution.Of((10, 0.5), (0, 0.25), (30, 0.25)), new WeibullDistribution(3, 12), Certain.Of(4),
    ];

    [Theory, MemberData(nameof(All))]
    public void Mean_and_spread_agree_with_a_naive_sum_over_quantiles(IDistribution distribution)
    {
        const int steps = 200_000;
        var values = Enumerable.Range(0, steps).Select(i => distribution.Quantile((i + 0.5) / steps)).ToArray();
        var mean = values.Average();
        Assert.Equal(distribution.Mean, mean, 1e-3);
        Assert.Equal(distribution.Sd, Math.Sqrt(values.Average(v => (v - mean) * (v - mean))), 2e-3);
    }

    [Theory, MemberData(nameof(All))]
    public void A_score_of_0_is_the_median_and_values_rise_with_scores(IDistribution distribution)
    {
        Assert.Equal(distribution.Quantile(0.5), distribution.AtScore(0), 1e-12);
        Gen.Select(Gen.Double[-6, 6], Gen.Double[-6, 6]).Sample((a, b) =>
            Assert.True(distribution.AtScore(Math.Min(a, b)) <= distribution.AtScore(Math.Max(a, b))));
    }

    [Fact]
    public void A_lognormal_by_mean_and_spread_has_them()
    {
        var cost = LognormalDistribution.OfMean(2_600, 700);
        Assert.Equal(2_600, cost.Mean, 9);
        Assert.Equal(700, cost.Sd, 9);
    }

    [Fact]
    public void A_weibull_life_of_scale_12_has_failed_in_63_2_per_cent_by_12() // by hand: 1 - 1/e
    {
        Assert.Equal(1 - (1 / Math.E), new WeibullDistribution(3, 12).ShareBelow(12), 12);
        Assert.Equal(12, WeibullDistribution.OfMean(12, 3).Mean, 12);
        Gen.Double[0.001, 0.999].Sample(p => Assert.Equal(p, new WeibullDistribution(2.5, 9).ShareBelow(new WeibullDistribution(2.5, 9).Quantile(p)), 1e-12));
    }

    [Fact]
    public void Shares_that_miss_a_case_are_refused() => Assert.StartsWith("Found shares that sum to 0.9, expected 1",
        Assert.Throws<ArgumentException>(() => DiscreteDistribution.Of((1, 0.5), (2, 0.4))).Message, StringComparison.Ordinal);

    [Fact]
    public void Ends_in_the_wrong_order_are_refused() => Assert.Equal("Found lowest 3 and highest 1, expected two finite numbers, the lowest first.",
        Assert.Throws<ArgumentException>(() => new UniformDistribution(3, 1)).Message);
}
