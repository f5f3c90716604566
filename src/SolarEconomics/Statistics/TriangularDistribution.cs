namespace SolarEconomics;

/// <summary>A distribution by three figures that people can name: the lowest, the likeliest, the highest.</summary>
public sealed record TriangularDistribution : IDistribution
{
    /// <summary>A distribution by its three figures.</summary>
    /// <param name="low">Lowest value.</param>
    /// <param name="mode">Likeliest value, from <paramref name="low"/> to <paramref name="high"/>.</param>
    /// <param name="high">Highest value, above <paramref name="low"/>.</param>
    /// <exception cref="ArgumentException">The three are not in order.</exception>
    public TriangularDistribution(double low, double mode, double high)
    {
        if (!(low <= mode && mode <= high && low < high && double.IsFinite(low) && double.IsFinite(high)))
            throw Throw.NotATriangle(low, mode, high);
        Low = low;
        Mode = mode;
        High = high;
    }

    /// <summary>Lowest value.</summary>
    public double Low { get; }

    /// <summary>Likeliest value.</summary>
    public double Mode { get; }

    /// <summary>Highest value.</summary>
    public double High { get; }

    /// <summary>Mean. Equation: (a + b + c) / 3.</summary>
    public double Mean => (Low + Mode + High) / 3;

    /// <summary>Standard deviation. Equation: √((a² + b² + c² − ab − ac − bc) / 18), written by differences.</summary>
    public double Sd
    {
        get
        {
            var (left, right) = (Mode - Low, High - Mode);
            return Math.Sqrt(((left * left) + (left * right) + (right * right)) / 18);
        }
    }

    /// <summary>Value below which a share of cases lies.</summary>
    /// <param name="share">Share of cases below. Range: 0 to 1.</param>
    /// <remarks>Equation: a + √(p (b − a)(c − a)) up to the mode, b − √((1 − p)(b − a)(b − c)) beyond, b the highest and c the likeliest.</remarks>
    public double Quantile(double share)
    {
        Require.Fraction(share);
        var width = High - Low;
        return share <= (Mode - Low) / width
            ? Low + Math.Sqrt(share * width * (Mode - Low))
            : High - Math.Sqrt((1 - share) * width * (High - Mode));
    }
}
