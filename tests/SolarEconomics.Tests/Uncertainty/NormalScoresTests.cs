using CsCheck;
using MathNet.Numerics.Distributions;

namespace SolarEconomics.Tests;

// Oracles: the runtime's own logarithm, sine and cosine; the bell curve's closed forms (moments, shares in the tails). Tolerances are five standard errors of the counts.
public sealed class NormalScoresTests
{
    private const int Draws = 400_000;
    private static readonly Lazy<double[]> s_scores = new(() =>
    {
        var scores = new double[4 * Draws];
        for (var draw = 0; draw < Draws; draw++)
        {
            var (a, b, c, d) = NormalScores.Four<Words1, Lanes1>((ulong)draw, 3, 11, 20_250_301);
            (scores[4 * draw], scores[(4 * draw) + 1], scores[(4 * draw) + 2], scores[(4 * draw) + 3]) = (a.Value, b.Value, c.Value, d.Value);
        }
        return scores;
    });

    [Fact]
    public void The_logarithm_agrees_with_the_runtimes() => Gen.Double[1e-13, 1].Sample(x =>
        Assert.True(Math.Abs(NormalScores.Ln<Words1, Lanes1>(Lanes1.Of(x)).Value - Math.Log(x)) <= 3e-12 * Math.Abs(Math.Log(x)), $"at {x}"), iter: 20_000);

    [Fact]
    public void Sine_and_cosine_agree_with_the_runtimes() => Gen.Double[-Math.PI / 4, Math.PI / 4].Sample(angle =>
    {
        var (sine, cosine) = NormalScores.SineAndCosine(Lanes1.Of(angle));
        Assert.True(Math.Abs(sine.Value - Math.Sin(angle)) < 1e-11);
        Assert.True(Math.Abs(cosine.Value - Math.Cos(angle)) < 1e-11);
    }, iter: 20_000);

    [Fact]
    public void Mean_variance_skew_and_weight_of_tails_are_those_of_the_bell_curve()
    {
        double n = s_scores.Value.Length;
        Assert.Equal(0, s_scores.Value.Average(), 5 / Math.Sqrt(n));
        Assert.Equal(1, s_scores.Value.Average(z => z * z), 5 * Math.Sqrt(2 / n));
        Assert.Equal(0, s_scores.Value.Average(z => z * z * z), 5 * Math.Sqrt(15 / n));
        Assert.Equal(3, s_scores.Value.Average(z => z * z * z * z), 5 * Math.Sqrt(96 / n));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void The_share_beyond_a_score_is_the_bell_curves_on_both_sides(double score)
    {
        double n = s_scores.Value.Length;
        var expected = Normal.CDF(0, 1, -score);
        var tolerance = 5 * Math.Sqrt(expected / n);
        Assert.Equal(expected, s_scores.Value.Count(z => z > score) / n, tolerance);
        Assert.Equal(expected, s_scores.Value.Count(z => z < -score) / n, tolerance);
    }

    [Fact]
    public void The_four_scores_of_a_block_and_those_of_neighbouring_draws_do_not_go_together()
    {
        var z = s_scores.Value;
        var tolerance = 5 / Math.Sqrt(Draws);
        for (var k = 0; k < 4; k++)
        {
            for (var other = k + 1; other < 4; other++)
                Assert.Equal(0, Enumerable.Range(0, Draws).Average(d => z[(4 * d) + k] * z[(4 * d) + other]), tolerance);
            Assert.Equal(0, Enumerable.Range(0, Draws - 1).Average(d => z[(4 * d) + k] * z[(4 * d) + 4 + k]), tolerance);
            // Squares too: a sine and a cosine of one radius must not be large together.
            Assert.Equal(1, Enumerable.Range(0, Draws).Average(d => Math.Pow(z[4 * d], 2) * Math.Pow(z[(4 * d) + 1], 2)), 5 * Math.Sqrt(8.0 / Draws));
        }
    }

    [Fact]
    public void Another_seed_stream_or_block_gives_other_scores()
    {
        double First(uint block, uint stream, ulong seed) => NormalScores.Four<Words1, Lanes1>(5, block, stream, seed).A.Value;
        double[] all = [First(0, 0, 1), First(1, 0, 1), First(0, 1, 1), First(0, 0, 2), First(0, 0, 1UL << 40)];
        Assert.Equal(all.Length, all.Distinct().Count());
    }
}
