using NodaTime;

namespace SolarEconomics;

/// <summary>One line of a battery's log: a capacity test, or what was seen and filled on that day.</summary>
/// <param name="Date">The day.</param>
public sealed record BatteryNote(LocalDate Date)
{
    /// <summary>Energy that a full discharge gave, counted at the terminals. Unit: kWh. Default: <see langword="null"/>, no test on that day.</summary>
    public double? TestedKwh { get; init; }

    /// <summary>Temperature of the cells in the test. Unit: °C. Default: <see langword="null"/>, not written down.</summary>
    public double? CellC { get; init; }

    /// <summary>Difference between the highest and the lowest cell. Unit: mV. Default: <see langword="null"/>.</summary>
    public double? CellSpreadMv { get; init; }

    /// <summary>Water filled in. Unit: L. Default: 0.</summary>
    public double WaterLitres { get; init => field = Require.AtLeastZero(value, "L"); }

    /// <summary>Full cycles that its own counter showed. Default: <see langword="null"/>.</summary>
    public double? Cycles { get; init; }
}
