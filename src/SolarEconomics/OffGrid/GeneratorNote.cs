using NodaTime;

namespace SolarEconomics;

/// <summary>One line of a generator's log: what was filled, and how long and how often it ran.</summary>
/// <param name="Date">The day.</param>
/// <param name="Litres">Fuel burned since the line before. Unit: L.</param>
/// <param name="Hours">Hours run since the line before. Unit: h.</param>
public sealed record GeneratorNote(LocalDate Date, double Litres, double Hours)
{
    /// <summary>Fuel burned since the line before. Unit: L.</summary>
    public double Litres { get; init => field = Require.AtLeastZero(value, "L"); } = Require.AtLeastZero(Litres, "L", nameof(Litres));

    /// <summary>Hours run since the line before. Unit: h.</summary>
    public double Hours { get; init => field = Require.AtLeastZero(value, "h"); } = Require.AtLeastZero(Hours, "h", nameof(Hours));

    /// <summary>Starts since the line before. Default: 0, not counted.</summary>
    public int Starts { get; init; }

    /// <summary>Oil filled in. Unit: L. Default: 0.</summary>
    public double OilLitres { get; init => field = Require.AtLeastZero(value, "L"); }

    /// <summary>What fuel, oil and repairs cost. Unit: any one currency. Default: 0.</summary>
    public double Cost { get; init => field = Require.AtLeastZero(value, "currency"); }
}
