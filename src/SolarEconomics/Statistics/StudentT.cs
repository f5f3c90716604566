namespace SolarEconomics;

/// <summary>Student's t: how many standard errors a small sample needs for a level of confidence.</summary>
public static class StudentT
{
    /// <summary>The quantile for a range that is open to both sides alike.</summary>
    /// <param name="level">Share of cases inside. Range: above 0 to below 1.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, above 0; need not be whole.</param>
    /// <remarks>Solved on the incomplete beta function: I(ν/(ν + t²); ν/2, 1/2) = 1 − level. Source: stat-1.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TwoSidedQuantile(double level, double degreesOfFreedom)
    {
        Require.Within(level, 1e-12, 1 - 1e-12, "share of cases; 95 % is written 0.95");
        Require.Within(degreesOfFreedom, 1e-3, 1e9, "degrees of freedom");
        var x = MathNet.Numerics.Distributions.Beta.InvCDF(degreesOfFreedom / 2, 0.5, 1 - level);
        return Math.Sqrt(degreesOfFreedom * (1 - x) / x);
    }
}
