namespace SolarEconomics;

/// <summary>A distribution of values above 0 whose logarithm follows a bell curve: prices, repair costs.</summary>
/// <param name="MeanOfLn">Mean of the natural logarithm.</param>
/// <param name="SdOfLn">Standard deviation of the natural logarithm, above 0.</param>
public sealed record LognormalDistribution(double MeanOfLn, double SdOfLn) : IDistribution
{
    private readonly NormalDistribution _ofLn = new(MeanOfLn, SdOfLn);

    /// <summary>The distribution with a stated mean and standard deviation.</summary>
    /// <param name="mean">Mean, above 0.</param>
    /// <param name="sd">Standard deviation, above 0, in the unit of the mean.</param>
    /// <remarks>Equation: σ² = ln(1 + (sd/mean)²), μ = ln(mean) − σ²/2.</remarks>
    public static LognormalDistribution OfMean(double mean, double sd)
    {
        var spread = Require.Within(sd, 1e-300, 1e300, "standard deviation above 0") / Require.Within(mean, 1e-300, 1e300, "mean above 0");
        var variance = Growth.LogOnePlus(spread * spread);
        return new LognormalDistribution(Math.Log(mean) - (variance / 2), Math.Sqrt(variance));
    }

    /// <summary>Mean. Equation: exp(μ + σ²/2).</summary>
    public double Mean => Math.Exp(MeanOfLn + (SdOfLn * SdOfLn / 2));

    /// <summary>Standard deviation. Equation: mean · √(exp(σ²) − 1).</summary>
    public double Sd => Mean * Math.Sqrt(Math.Exp(SdOfLn * SdOfLn) - 1);

    /// <summary>Value below which a share of cases lies.</summary>
    /// <param name="share">Share of cases below. Range: above 0 to below 1.</param>
    public double Quantile(double share) => Math.Exp(_ofLn.Quantile(share));

    /// <summary>The value whose logarithm lies a number of standard deviations from the mean of the logarithm. Equation: exp(μ + σ z).</summary>
    /// <param name="score">Standard deviations from the mean.</param>
    public double AtScore(double score) => Math.Exp(_ofLn.AtScore(score));
}
