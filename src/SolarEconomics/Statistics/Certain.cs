namespace SolarEconomics;

/// <summary>A number known for sure, where a distribution is asked for.</summary>
public sealed record Certain : IDistribution
{
    private Certain(double value) => Value = value;

    /// <summary>The number.</summary>
    public double Value { get; }

    /// <summary>The number itself.</summary>
    public double Mean => Value;

    /// <summary>0: there is no spread.</summary>
    public double Sd => 0;

    /// <summary>A number known for sure.</summary>
    /// <param name="value">The number, finite.</param>
    public static Certain Of(double value) => new(Require.Finite(value));

    /// <summary>The number, at any share.</summary>
    /// <param name="share">Share of cases below. Range: 0 to 1.</param>
    public double Quantile(double share)
    {
        Require.Fraction(share);
        return Value;
    }

    /// <summary>The number, at any score.</summary>
    /// <param name="score">Standard deviations from the mean.</param>
    public double AtScore(double score) => Value;
}
