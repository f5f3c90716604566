namespace SolarEconomics;

/// <summary>A straight line fitted by least squares, with how sure it is.</summary>
/// <remarks>Units: the slope is in units of y per unit of x, all else in units of y. Immutable, so safe to share between threads. Source: stat-1.</remarks>
public sealed record LineFit
{
    private LineFit(double[] x, double[] y, double intercept, double slope, double spreadOfX, bool throughOrigin)
    {
        Count = x.Length;
        Intercept = intercept;
        Slope = slope;
        DegreesOfFreedom = Count - (throughOrigin ? 1 : 2);
        Residuals = [.. x.Select((v, i) => y[i] - intercept - (slope * v))];
        ResidualSumOfSquares = Residuals.Sum(r => r * r);
        ResidualSd = Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom);
        SlopeStandardError = ResidualSd / Math.Sqrt(spreadOfX);
        var meanX = Statistics.MeanOf(x);
        InterceptStandardError = throughOrigin ? 0 : ResidualSd * Math.Sqrt((1.0 / Count) + (meanX * meanX / spreadOfX));
        var centre = throughOrigin ? 0 : Statistics.MeanOf(y);
        var total = y.Sum(v => (v - centre) * (v - centre));
        RSquared = total > 0 ? 1 - (ResidualSumOfSquares / total) : 1;
        F = ResidualSumOfSquares > 0 ? (total - ResidualSumOfSquares) / (ResidualSd * ResidualSd) : double.PositiveInfinity;
    }

    /// <summary>Number of points.</summary>
    public int Count { get; }

    /// <summary>Value at x = 0; 0 for a line through the origin.</summary>
    public double Intercept { get; }

    /// <summary>Rise per unit of x.</summary>
    public double Slope { get; }

    /// <summary>Standard error of the intercept; 0 for a line through the origin.</summary>
    public double InterceptStandardError { get; }

    /// <summary>Standard error of the slope, points taken as independent.</summary>
    public double SlopeStandardError { get; }

    /// <summary>Points less fitted constants.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>What the line leaves unexplained at each point.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>Sum of the squared residuals.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Standard deviation of the residuals, by degrees of freedom.</summary>
    public double ResidualSd { get; }

    /// <summary>Share of the squares explained. Range: 0 to 1. Around the mean; around 0 for a line through the origin.</summary>
    public double RSquared { get; }

    /// <summary>F of the line against its mean (or 0); infinite where every point lies on the line.</summary>
    public double F { get; }

    /// <summary>A line with intercept.</summary>
    /// <param name="x">At least three finite values, not all alike.</param>
    /// <param name="y">As many finite values.</param>
    /// <remarks>Equation: slope = Σ (x − x̄)(y − ȳ) / Σ (x − x̄)², intercept = ȳ − slope · x̄.</remarks>
    /// <exception cref="ArgumentException">Too few points, columns of different length, a value not finite, or all x alike.</exception>
    public static LineFit Of(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        Checked(x, y, atLeast: 3);
        var (meanX, meanY) = (Statistics.MeanOf(x), Statistics.MeanOf(y));
        var (across, spread) = (0.0, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            var d = x[i] - meanX;
            across += d * (y[i] - meanY);
            spread += d * d;
        }
        if (spread == 0) throw Throw.AllAlike(x[0], x.Length);
        var slope = across / spread;
        return new LineFit(x.ToArray(), y.ToArray(), meanY - (slope * meanX), slope, spread, throughOrigin: false);
    }

    /// <summary>A line through the origin.</summary>
    /// <param name="x">At least two finite values, not all 0.</param>
    /// <param name="y">As many finite values.</param>
    /// <remarks>Equation: slope = Σ x y / Σ x².</remarks>
    /// <exception cref="ArgumentException">Too few points, columns of different length, a value not finite, or all x are 0.</exception>
    public static LineFit ThroughOrigin(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        Checked(x, y, atLeast: 2);
        var (across, spread) = (0.0, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            across += x[i] * y[i];
            spread += x[i] * x[i];
        }
        if (spread == 0) throw Throw.AllAlike(0, x.Length);
        return new LineFit(x.ToArray(), y.ToArray(), 0, across / spread, spread, throughOrigin: true);
    }

    /// <summary>Range of the slope, points taken as independent.</summary>
    /// <param name="level">Share of cases. Range: above 0 to below 1. Default: 0.95.</param>
    /// <remarks>Equation: slope ± t · standard error. Source: stat-1.</remarks>
    public ConfidenceInterval SlopeInterval(double level = 0.95)
    {
        var half = StudentT.TwoSidedQuantile(level, DegreesOfFreedom) * SlopeStandardError;
        return new ConfidenceInterval(Slope - half, Slope + half, level);
    }

    /// <summary>Range of the slope that allows for neighbours being alike: fewer independent points, so wider.</summary>
    /// <param name="level">Share of cases. Range: above 0 to below 1. Default: 0.95.</param>
    /// <remarks>Equation: standard error × √((1 + ρ)/(1 − ρ)) with ρ the lag-1 autocorrelation of the residuals, held to 0…0.95, and
    /// degrees of freedom n (1 − ρ)/(1 + ρ) − 2, at least 1. A negative ρ never narrows the range. Source: stat-3.</remarks>
    public ConfidenceInterval SlopeIntervalWithAutocorrelation(double level = 0.95)
    {
        var residuals = Residuals.ToArray();
        if (Count < 4 || ResidualSumOfSquares == 0) return SlopeInterval(level);
        var alike = Math.Clamp(Statistics.Autocorrelation(residuals), 0, 0.95);
        var factor = (1 + alike) / (1 - alike);
        var freedom = Math.Max(1, (Count / factor) - (Count - DegreesOfFreedom));
        var half = StudentT.TwoSidedQuantile(level, freedom) * SlopeStandardError * Math.Sqrt(factor);
        return new ConfidenceInterval(Slope - half, Slope + half, level);
    }

    private static void Checked(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int atLeast)
    {
        if (x.Length != y.Length) throw Throw.UnequalColumns(x.Length, y.Length);
        Statistics.Checked(x, atLeast);
        Statistics.Checked(y, atLeast);
    }
}
