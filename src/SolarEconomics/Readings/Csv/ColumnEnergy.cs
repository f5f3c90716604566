using NodaTime;

namespace SolarEconomics;

/// <summary>A column as intervals of energy.</summary>
/// <param name="Starts">Interval starts, ascending.</param>
/// <param name="Ends">Interval ends, excluded.</param>
/// <param name="Kwh">Energy per interval; 0 where missing.</param>
/// <param name="Quality">What is known of each value.</param>
internal sealed record ColumnEnergy(Instant[] Starts, Instant[] Ends, double[] Kwh, Quality[] Quality)
{
    /// <summary>How often a counter went back.</summary>
    internal int Resets { get; init; }
}
