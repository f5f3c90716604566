namespace SolarEconomics;

/// <summary>A distribution of values above 0 whose logarithm follows a bell curve: prices, repair costs.</summary>
/// <param name="MeanOfLn">Mean of the natural logarithm.</param>
/// <param name="SdOfLn">Standard deviation of the natural logarithm, above 0.</param>
public sealed record LognormalDistribution(double MeanOfLn, double SdOfLn)
{
    private readonly NormalDistribution _ofLn = new(MeanOfLn, SdOfLn);

    /// <summary>Mean. Equation: exp(μ + σ²/2).</summary>
    public double Mean => Math.Exp(MeanOfLn + (SdOfLn * SdOfLn / 2));

    /// <summary>Standard deviation. Equation: mean · √(exp(σ²) − 1).</summary>
    public double Sd => Mean * Math.Sqrt(Math.Exp(SdOfLn * SdOfLn) - 1);

    /// <summary>Value below which a share of cases lies.</summary>
    /// <param name="share">Share of cases below. Range: above 0 to below 1.</param>
    public double Quantile(double share) => Math.Exp(_ofLn.Quantile(share));
}
