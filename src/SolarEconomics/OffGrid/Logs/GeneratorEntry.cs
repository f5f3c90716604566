using NodaTime;

namespace SolarEconomics;

/// <summary>One row of a generator's log: what its hour meter showed, and what was filled in.</summary>
/// <param name="Date">Day of the row.</param>
/// <param name="HourMeter">Hours on its meter, from the first day on; a used generator does not start at 0. Unit: h.</param>
public sealed record GeneratorEntry(LocalDate Date, double HourMeter)
{
    /// <summary>Fuel filled in. Unit: litres. Default: 0.</summary>
    public double Litres { get; init; }

    /// <summary>Price of that fuel. Unit: currency per litre. Default: <see langword="null"/>, not known.</summary>
    public double? PricePerLitre { get; init; }

    /// <summary>Whether the tank was full after it. Default: true.</summary>
    public bool IsFull { get; init; } = true;

    /// <summary>Starts since the row before. Default: <see langword="null"/>, not counted.</summary>
    public double? Starts { get; init; }

    /// <summary>Engine oil filled in or changed. Unit: litres. Default: 0.</summary>
    public double OilLitres { get; init; }

    /// <summary>Price of that oil. Unit: currency per litre. Default: 0.</summary>
    public double OilPricePerLitre { get; init; }

    /// <summary>The owner's note.</summary>
    public string? Note { get; init; }

    /// <summary>File it was read from; <see langword="null"/> where it was written in code.</summary>
    public string? File { get; init; }

    /// <summary>Line in <see cref="File"/>, counted from 1; 0 where it was written in code.</summary>
    public int Line { get; init; }
}
