using System.Globalization;

namespace SolarEconomics.Tests.StatisticsRoom;

/// <summary>The outside rows on statistics (tests/data/published/rows-statistics.csv), certified data sets included.</summary>
public sealed class StatisticsRowsTests
{
    [Theory, PublishedRows("line-fit")]
    public void A_line_agrees_with_the_certified_values(string id) => Published.Check(id, row =>
    {
        var data = Columns(row.Text("data"));
        var fit = row.Has("through origin") ? LineFit.ThroughOrigin(data[1], data[0]) : LineFit.Of(data[1], data[0]);
        return row.Text("give") switch
        {
            "intercept" => fit.Intercept,
            "intercept error" => fit.InterceptStandardError,
            "slope" => fit.Slope,
            "slope error" => fit.SlopeStandardError,
            "residual sd" => fit.ResidualSd,
            "R squared" => fit.RSquared,
            "F" => fit.F,
            "residual squares" => fit.ResidualSumOfSquares,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("slope-interval")]
    public void The_interval_of_a_slope_agrees_with_the_certified_one(string id) => Published.Check(id, row =>
    {
        var data = Columns(row.Text("data"));
        var fit = LineFit.Of(data[1], data[0]);
        var interval = fit.SlopeInterval(row.Number("level"));
        return row.Text("give") switch
        {
            "t" => StudentT.TwoSidedQuantile(row.Number("level"), fit.DegreesOfFreedom),
            "low" => interval.Low,
            "high" => interval.High,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("multiple-regression")]
    public void A_fit_by_several_columns_agrees_with_the_certified_values(string id) => Published.Check(id, row =>
    {
        var data = Columns(row.Text("data"));
        var fit = RegressionFit.Of(data[1..], data[0]);
        return row.Text("give") == "residual sd" ? fit.ResidualSd : fit.Coefficients[row.Whole("give")];
    });

    [Theory, PublishedRows("far-from-zero")]
    public void Values_far_from_zero_lose_no_digits(string id) => Published.Check(id, row =>
    {
        var at = decimal.Parse(row.Text("base"), CultureInfo.InvariantCulture);
        var values = Enumerable.Range(0, 1001).Select(i => (double)(i == 0 ? at : i % 2 == 1 ? at - 0.1m : at + 0.1m)).ToArray();
        return row.Text("give") switch
        {
            "mean" => Statistics.Mean(values),
            "sd" => Statistics.StandardDeviation(values),
            "autocorrelation" => Statistics.Autocorrelation(values),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("percentile")]
    public void A_percentile_agrees_with_the_published_ones(string id) =>
        Published.Check(id, row => Statistics.Percentile(row.Numbers("values"), row.Number("share")));

    [Theory, PublishedRows("normal")]
    public void A_quantile_of_the_bell_curve_agrees_with_the_known_constants(string id) => Published.Check(id, row =>
    {
        var normal = new NormalDistribution(row.Number("mean"), row.Number("sd"));
        return row.Text("give") == "quantile" ? normal.Quantile(row.Number("share")) : normal.ExceededIn(row.Number("share"));
    });

    [Theory, PublishedRows("lognormal")]
    public void A_lognormal_quantile_agrees_with_the_known_example(string id) => Published.Check(id, row =>
        new LognormalDistribution(row.Number("mean of ln"), row.Number("sd of ln")).Quantile(row.Number("share")));

    [Theory, PublishedRows("sampling-error")]
    public void The_error_of_a_simulation_agrees_with_its_formula(string id) => Published.Check(id, row => row.Text("give") == "mean"
        ? SamplingError.OfMean(row.Number("sd"), row.Whole("draws"))
        : SamplingError.OfPercentile(new NormalDistribution(0, row.Number("sd")), row.Number("share"), row.Whole("draws")));

    [Theory, PublishedRows("triangular")]
    public void A_triangle_agrees_with_its_closed_forms(string id) => Published.Check(id, row =>
    {
        var triangle = new TriangularDistribution(row.Number("low"), row.Number("mode"), row.Number("high"));
        return row.Text("give") switch
        {
            "mean" => triangle.Mean,
            "sd" => triangle.Sd,
            "quantile" => triangle.Quantile(row.Number("share")),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("mean-of-years")]
    public void The_common_part_of_a_spread_does_not_shrink_with_years(string id) => Published.Check(id, row =>
        NormalDistribution.OfMeanOfYears(row.Number("mean"), row.Number("yearly"), row.Number("common"), row.Whole("years")).ExceededIn(row.Number("exceeded in")));

    /// <summary>The columns of a published data set, in the order of its file.</summary>
    private static double[][] Columns(string key)
    {
        var lines = File.ReadAllLines(Path.Combine(Published.DataFolder(), key, "data.txt")).Skip(1)
            .Select(l => l.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        return [.. Enumerable.Range(0, lines[0].Length).Select(c => lines.Select(l => l[c]).ToArray())];
    }
}
