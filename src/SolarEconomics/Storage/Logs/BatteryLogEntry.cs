using NodaTime;

namespace SolarEconomics;

/// <summary>One row of a battery's log.</summary>
/// <param name="Date">Day of the row.</param>
/// <param name="Kind">What it tells.</param>
/// <param name="Value">How much, in the unit of the kind.</param>
public sealed record BatteryLogEntry(LocalDate Date, BatteryLogKind Kind, double Value)
{
    /// <summary>Temperature of the cells at a test. Unit: °C. Default: <see langword="null"/>, not read.</summary>
    public double? CellC { get; init; }

    /// <summary>The owner's note.</summary>
    public string? Note { get; init; }

    /// <summary>File it was read from; <see langword="null"/> where it was written in code.</summary>
    public string? File { get; init; }

    /// <summary>Line in <see cref="File"/>, counted from 1; 0 where it was written in code.</summary>
    public int Line { get; init; }
}
