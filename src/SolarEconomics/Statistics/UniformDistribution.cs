namespace SolarEconomics;

/// <summary>Any value between two ends is as likely as any other.</summary>
public sealed record UniformDistribution : IDistribution
{
    /// <summary>A distribution by its ends.</summary>
    /// <param name="low">Lowest value.</param>
    /// <param name="high">Highest value, above <paramref name="low"/>.</param>
    /// <exception cref="ArgumentException">The two are not in order.</exception>
    public UniformDistribution(double low, double high) =>
        (Low, High) = low < high && double.IsFinite(low) && double.IsFinite(high) ? (low, high) : throw Throw.EndsNotInOrder(low, high);

    /// <summary>Lowest value.</summary>
    public double Low { get; }

    /// <summary>Highest value.</summary>
    public double High { get; }

    /// <summary>Mean. Equation: (a + b) / 2.</summary>
    public double Mean => Low + ((High - Low) / 2);

    /// <summary>Standard deviation. Equation: (b − a) / √12.</summary>
    public double Sd => (High - Low) / Math.Sqrt(12);

    /// <summary>Value below which a share of cases lies.</summary>
    /// <param name="share">Share of cases below. Range: 0 to 1.</param>
    public double Quantile(double share) => Low + (Require.Fraction(share) * (High - Low));
}
