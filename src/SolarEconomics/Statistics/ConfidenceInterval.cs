using System.Globalization;

namespace SolarEconomics;

/// <summary>A range that holds the true value in a stated share of cases.</summary>
/// <param name="Low">Lower end, in the unit of the estimate.</param>
/// <param name="High">Upper end, in the unit of the estimate; not below <paramref name="Low"/>.</param>
/// <param name="Level">Share of cases. Range: 0 to 1; 0.95 is usual.</param>
/// <remarks>The <c>default</c> is a point at 0 of level 0.</remarks>
public readonly record struct ConfidenceInterval(double Low, double High, double Level)
{
    /// <summary>Half of the width: what stands after ±.</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Middle of the range.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Whether a value lies inside, ends included.</summary>
    /// <param name="value">Value in the unit of the estimate.</param>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>Prints <c>-0.82 to -0.31 (95 %)</c> in invariant form.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low:G6} to {High:G6} ({Level * 100:0.#} %)");
}
