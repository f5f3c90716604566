using MathNet.Numerics;

namespace SolarEconomics;

/// <summary>How long a part lasts: failures that grow likelier with age (shape above 1), keep their odds (1), or fall off after a start (below 1).</summary>
/// <param name="Shape">How the odds move with age. Above 0; 2 to 4 is usual for wear, common practice, no source.</param>
/// <param name="Scale">The age by which 63.2 % have failed, above 0. Unit: years for a life.</param>
public sealed record WeibullDistribution(double Shape, double Scale) : IDistribution
{
    /// <summary>How the odds move with age, above 0.</summary>
    public double Shape { get; } = Require.Within(Shape, 1e-3, 1e3, "shape of a Weibull distribution");

    /// <summary>The age by which 63.2 % have failed, above 0.</summary>
    public double Scale { get; } = Require.Within(Scale, 1e-9, 1e9, "scale of a Weibull distribution");

    /// <summary>The distribution with a stated mean.</summary>
    /// <param name="mean">Mean life, above 0.</param>
    /// <param name="shape">How the odds move with age, above 0.</param>
    public static WeibullDistribution OfMean(double mean, double shape) =>
        new(shape, Require.Within(mean, 1e-9, 1e9, "mean life") / SpecialFunctions.Gamma(1 + (1 / shape)));

    /// <summary>Mean. Equation: λ Γ(1 + 1/k). Source: stat-6.</summary>
    public double Mean => Scale * SpecialFunctions.Gamma(1 + (1 / Shape));

    /// <summary>Standard deviation. Equation: λ √(Γ(1 + 2/k) − Γ(1 + 1/k)²). Source: stat-6.</summary>
    public double Sd
    {
        get
        {
            var first = SpecialFunctions.Gamma(1 + (1 / Shape));
            return Scale * Math.Sqrt(SpecialFunctions.Gamma(1 + (2 / Shape)) - (first * first));
        }
    }

    /// <summary>Age by which a share of cases has failed.</summary>
    /// <param name="share">Share of cases failed. Range: 0 to below 1.</param>
    /// <remarks>Equation: λ (−ln(1 − p))^(1/k). Source: stat-6.</remarks>
    public double Quantile(double share) => Scale * Math.Pow(-Growth.LogOnePlus(-Require.Within(share, 0, 1 - 1e-16, "share of cases failed")), 1 / Shape);

    /// <summary>Share of cases that have failed by an age.</summary>
    /// <param name="age">Age, 0 or more.</param>
    /// <remarks>Equation: 1 − exp(−(t/λ)^k). Source: stat-6.</remarks>
    public double ShareBelow(double age) => age <= 0 ? 0 : -Growth.ExpMinusOne(-Math.Pow(age / Scale, Shape));
}
