namespace SolarEconomics;

/// <summary>A bell curve around a mean.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="Sd">Standard deviation, above 0, in the unit of the mean.</param>
public sealed record NormalDistribution(double Mean, double Sd) : IDistribution
{
    /// <summary>The mean.</summary>
    public double Mean { get; } = Require.Finite(Mean);

    /// <summary>Standard deviation, above 0, in the unit of the mean.</summary>
    public double Sd { get; } = Sd > 0 && double.IsFinite(Sd) ? Sd : throw new ArgumentOutOfRangeException(nameof(Sd), Sd, "Expected a standard deviation above 0.");

    /// <summary>Mean 0, standard deviation 1.</summary>
    public static NormalDistribution Standard { get; } = new(0, 1);

    /// <summary>The mean of several years, each with a spread of its own and all with one in common.</summary>
    /// <param name="mean">Mean of one year.</param>
    /// <param name="yearlySpread">Spread of each year by itself (weather), relative to the mean. Range: 0 to 1.</param>
    /// <param name="commonSpread">Spread that all years share (yield estimate, ageing), relative to the mean. Range: 0 to 1; one of the two is above 0.</param>
    /// <param name="years">Number of years, 1 or more.</param>
    /// <remarks>Equation: relative sd = √(common² + yearly² / n). The common part does not shrink with years. Source: stat-4.</remarks>
    public static NormalDistribution OfMeanOfYears(double mean, double yearlySpread, double commonSpread, int years)
    {
        Require.Fraction(yearlySpread);
        Require.Fraction(commonSpread);
        Require.Within(years, 1, 1000, "years");
        return new NormalDistribution(mean, Math.Abs(Require.Finite(mean)) * Math.Sqrt((commonSpread * commonSpread) + (yearlySpread * yearlySpread / years)));
    }

    /// <summary>Value below which a share of cases lies.</summary>
    /// <param name="share">Share of cases below. Range: above 0 to below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public double Quantile(double share) =>
        Mean + (Sd * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, Require.Within(share, 1e-300, 1 - 1e-16, "share of cases below; 90 % is written 0.9")));

    /// <summary>The value a number of standard deviations from the mean. Equation: μ + σ z.</summary>
    /// <param name="score">Standard deviations from the mean.</param>
    public double AtScore(double score) => Mean + (Sd * score);

    /// <summary>Value that is exceeded in a share of cases: for yearly energy, 0.9 gives what nine years of ten bring at least.</summary>
    /// <param name="share">Share of cases above. Range: above 0 to below 1.</param>
    public double ExceededIn(double share) => Mean - (Quantile(share) - Mean);

    /// <summary>Density at a value, per unit of the value.</summary>
    /// <param name="value">The value.</param>
    public double Density(double value)
    {
        var z = (value - Mean) / Sd;
        return Math.Exp(-z * z / 2) / (Sd * Math.Sqrt(2 * Math.PI));
    }
}
