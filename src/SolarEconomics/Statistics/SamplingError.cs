namespace SolarEconomics;

/// <summary>How far a figure from a number of draws is off by chance: one standard error.</summary>
public static class SamplingError
{
    /// <summary>Of the mean. Equation: σ / √n.</summary>
    /// <param name="sd">Standard deviation of one draw, 0 or more.</param>
    /// <param name="draws">Number of draws, 1 or more.</param>
    public static double OfMean(double sd, int draws) =>
        Require.Within(sd, 0, double.MaxValue, "standard deviation") / Math.Sqrt(Require.Within(draws, 1, int.MaxValue, "draws"));

    /// <summary>Of a percentile of a bell curve. Equation: √(p (1 − p) / n) / f(q), f the density at the percentile.</summary>
    /// <param name="distribution">What is drawn from.</param>
    /// <param name="share">Share of cases below. Range: above 0 to below 1.</param>
    /// <param name="draws">Number of draws, 1 or more.</param>
    /// <remarks>Source: stat-1. Grows fast towards the ends: a 1st percentile needs many more draws than a median.</remarks>
    public static double OfPercentile(NormalDistribution distribution, double share, int draws)
    {
        ArgumentNullException.ThrowIfNull(distribution);
        Require.Within(draws, 1, int.MaxValue, "draws");
        return Math.Sqrt(share * (1 - share) / draws) / distribution.Density(distribution.Quantile(share));
    }
}
