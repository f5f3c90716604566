namespace SolarEconomics;

/// <summary>A column as intervals of energy.</summary>
/// <param name="Times">Starts and ends of the intervals, ascending.</param>
/// <param name="Kwh">Energy per interval; 0 where missing. May be longer than the times: the rest is room that was not needed.</param>
/// <param name="Quality">What is known of each value; as long as <paramref name="Kwh"/>.</param>
internal sealed record ColumnEnergy(TimeAxis Times, double[] Kwh, Quality[] Quality)
{
    internal int Count => Times.Count;

    internal ReadOnlySpan<double> Values => Kwh.AsSpan(0, Count);

    /// <summary>How often a counter went back.</summary>
    internal int Resets { get; init; }

    /// <summary>How many states of a counter stand behind it; <see langword="null"/> where the record states energy itself.</summary>
    internal int? States { get; init; }

    /// <summary>The first and the last of them, of a counter that goes on from file to file; <see langword="null"/> for any other column.</summary>
    internal CounterEnds? Ends { get; init; }
}
