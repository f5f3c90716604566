using NodaTime;

namespace SolarEconomics;

/// <summary>A day's energy, as it was and as weather and plant should have given it.</summary>
/// <param name="Date">The day.</param>
/// <param name="MeasuredKwh">Measured; <see langword="null"/> where the record has a gap. A gap is not a failure.</param>
/// <param name="ExpectedKwh">Expected from a model or a sister array, 0 or more.</param>
/// <param name="HottestAirC">Highest air temperature of the day, in °C, where known.</param>
/// <param name="Censored">Whether the record marks the day as held back: battery full, export limit, trip.</param>
/// <param name="ClippedKwh">About what an inverter at its limit clipped, 0 or more: not measured, and not a shortfall.</param>
public readonly record struct DayOfOutput(LocalDate Date, double? MeasuredKwh, double ExpectedKwh, double? HottestAirC = null, bool Censored = false, double ClippedKwh = 0)
{
    /// <summary>What the modules made, measured and clipped; <see langword="null"/> where the record has a gap.</summary>
    public double? MadeKwh => MeasuredKwh + ClippedKwh;

    /// <summary>Made over expected; <see langword="null"/> where either is missing or too small to tell.</summary>
    public double? Ratio => MadeKwh is { } made && ExpectedKwh > 0.1 ? made / ExpectedKwh : null;
}
