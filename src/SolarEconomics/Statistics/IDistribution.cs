using MathNet.Numerics.Distributions;

namespace SolarEconomics;

/// <summary>What is known of a number that is not known for sure: any value has its odds.</summary>
public interface IDistribution
{
    /// <summary>Mean of all cases.</summary>
    double Mean { get; }

    /// <summary>Standard deviation of all cases.</summary>
    double Sd { get; }

    /// <summary>Value below which a share of cases lies.</summary>
    /// <param name="share">Share of cases below. Range: above 0 to below 1.</param>
    double Quantile(double share);

    /// <summary>The value that lies as far out in this distribution as a standard normal score lies in its own.</summary>
    /// <param name="score">A score of mean 0 and standard deviation 1. Finite.</param>
    /// <remarks>Equation: Q(Φ(z)). Drawing correlated scores and looking their values up here is the Gaussian copula. Source: stat-5.</remarks>
    double AtScore(double score) => Quantile(Math.Clamp(Normal.CDF(0, 1, score), 1e-300, 1 - 1e-16));
}
