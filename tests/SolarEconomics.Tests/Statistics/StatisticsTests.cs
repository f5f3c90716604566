using CsCheck;

namespace SolarEconomics.Tests.StatisticsRoom;

public sealed class StatisticsTests
{
    private static readonly Gen<double[]> Values = Gen.Double[-1000, 1000].Array[5, 40];

    [Fact] // by hand: 1, 2, 4 → mean 7/3, squares 4.6667, sd √2.3333
    public void Mean_and_deviation_of_three_values_are_those_by_hand()
    {
        Assert.Equal(7.0 / 3, Statistics.Mean([1, 2, 4]), 1e-14);
        Assert.Equal(Math.Sqrt(7.0 / 3), Statistics.StandardDeviation([1, 2, 4]), 1e-14);
        Assert.Equal(2, Statistics.Median([4, 1, 2]));
    }

    [Fact]
    public void A_percentile_leaves_its_share_of_the_values_below() =>
        Gen.Select(Values, Gen.Double[0, 1]).Sample((values, share) =>
        {
            var at = Statistics.Percentile(values, share);
            var below = values.Count(v => v < at);
            Assert.InRange(below, 0, Math.Ceiling(share * (values.Length - 1)));
            Assert.True(values.Count(v => v <= at) >= Math.Floor(share * (values.Length - 1)) + 1 - 1e-9);
        });

    [Fact]
    public void A_line_agrees_with_the_sums_written_out_naively() =>
        Gen.Select(Gen.Double[-10, 10].Array[12], Gen.Double[-10, 10].Array[12]).Where((x, _) => x.Max() - x.Min() > 1).Sample((x, y) =>
        {
            var n = x.Length;
            var (sx, sy, sxx, sxy) = (x.Sum(), y.Sum(), x.Sum(v => v * v), x.Select((v, i) => v * y[i]).Sum());
            var slope = ((n * sxy) - (sx * sy)) / ((n * sxx) - (sx * sx));
            var fit = LineFit.Of(x, y);
            Assert.Equal(slope, fit.Slope, 1e-8);
            Assert.Equal((sy - (slope * sx)) / n, fit.Intercept, 1e-8);
        });

    [Fact]
    public void A_line_and_a_fit_by_one_column_are_the_same() =>
        Gen.Select(Gen.Double[-10, 10].Array[12], Gen.Double[-10, 10].Array[12]).Where((x, _) => x.Max() - x.Min() > 1).Sample((x, y) =>
        {
            var line = LineFit.Of(x, y);
            var fit = RegressionFit.Of([x], y);
            Assert.Equal(line.Slope, fit.Coefficients[1], 1e-9);
            Assert.Equal(line.Intercept, fit.Coefficients[0], 1e-9);
            Assert.Equal(line.SlopeStandardError, fit.StandardErrors[1], 1e-9);
            Assert.Equal(line.InterceptStandardError, fit.StandardErrors[0], 1e-9);
            Assert.Equal(line.RSquared, fit.RSquared, 1e-9);
        });

    [Fact] // property: the share of intervals that hold the true slope is their level
    public void Nineteen_of_twenty_intervals_hold_the_true_slope()
    {
        var random = new Random(20261125);
        var x = Enumerable.Range(0, 8).Select(i => (double)i).ToArray();
        var held = 0;
        const int Draws = 4000;
        for (var draw = 0; draw < Draws; draw++)
        {
            var y = x.Select(v => (2 * v) + NormalDistribution.Standard.Quantile(random.NextDouble() + 1e-12)).ToArray();
            if (LineFit.Of(x, y).SlopeInterval().Contains(2)) held++;
        }
        // By chance √(0.95 · 0.05 / 4000) = 0.0034; four of these.
        Assert.InRange(held / (double)Draws, 0.95 - 0.0138, 0.95 + 0.0138);
    }

    [Fact]
    public void Neighbours_that_are_alike_widen_the_interval_and_opposite_ones_never_narrow_it()
    {
        var x = Enumerable.Range(0, 30).Select(i => (double)i).ToArray();
        var slow = LineFit.Of(x, [.. x.Select(v => v + Math.Sin(v / 4))]);
        var quick = LineFit.Of(x, [.. x.Select(v => v + ((int)v % 2 == 0 ? 1 : -1))]);
        Assert.True(slow.SlopeIntervalWithAutocorrelation().HalfWidth > 2 * slow.SlopeInterval().HalfWidth);
        Assert.Equal(quick.SlopeInterval().HalfWidth, quick.SlopeIntervalWithAutocorrelation().HalfWidth, 1e-12);
    }

    [Fact]
    public void Quantile_and_share_of_a_triangle_undo_each_other() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.01, 10], Gen.Double[0.01, 10], Gen.Double[0, 1]).Sample((low, left, right, share) =>
        {
            var triangle = new TriangularDistribution(low, low + left, low + left + right);
            var at = triangle.Quantile(share);
            var width = left + right;
            var got = at <= triangle.Mode
                ? (at - low) * (at - low) / (width * left)
                : 1 - ((triangle.High - at) * (triangle.High - at) / (width * right));
            Assert.Equal(share, got, 1e-7);
        });

    [Fact]
    public void Impossible_input_is_refused_in_words()
    {
        Assert.Equal("Found 1 value, expected at least 2. A longer record is needed to tell.",
            Assert.Throws<ArgumentException>(() => Statistics.StandardDeviation([1])).Message);
        Assert.Equal("Found NaN at place 2, expected finite numbers. Leave missing readings out instead of passing NaN.",
            Assert.Throws<ArgumentException>(() => Statistics.Mean([1, double.NaN])).Message);
        Assert.Equal("Found columns of 3 and 2 values, expected one length.",
            Assert.Throws<ArgumentException>(() => LineFit.Of([1, 2, 3], [1, 2])).Message);
        Assert.Equal("Found 3 times the same value 1, expected values that differ: nothing can be fitted to them.",
            Assert.Throws<ArgumentException>(() => LineFit.Of([1, 1, 1], [1, 2, 3])).Message);
        Assert.Equal("Found that column 2 follows from the columns before it, expected columns that each add something. Leave it out.",
            Assert.Throws<ArgumentException>(() => RegressionFit.Of([[1, 2, 3, 4, 5], [2, 4, 6, 8, 10]], [1, 2, 2, 4, 5])).Message);
        Assert.Equal("Found lowest 3, likeliest 2, highest 4, expected them in this order, lowest below highest.",
            Assert.Throws<ArgumentException>(() => new TriangularDistribution(3, 2, 4)).Message);
        Assert.Contains("standard deviation above 0", Assert.Throws<ArgumentOutOfRangeException>(() => new NormalDistribution(1, 0)).Message, StringComparison.Ordinal);
    }
}
