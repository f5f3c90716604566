namespace SolarEconomics;

/// <summary>The readings of one device's lifetime counter, in date order.</summary>
/// <param name="Device">Name of the device, as in the plant's description.</param>
/// <param name="Point">Where in the plant it counts.</param>
/// <param name="Readings">The readings, earliest first; at least one.</param>
/// <remarks>What the counter showed when the device came into this plant is its opening value: a second-hand device does not start at 0.</remarks>
public sealed record Counter(string Device, MeasurementPoint Point, IReadOnlyList<CounterReading> Readings)
{
    /// <summary>What the counter showed on the day the device was put to work here. Unit: kWh. Default: 0.</summary>
    public double OpeningKwh { get; init; }

    /// <summary>What the counter showed last: what the straight line adds up. Unit: kWh.</summary>
    public double LastKwh => Readings[^1].Kwh;

    /// <summary>Energy counted here: last reading less opening value, resets and overruns of the register added back. Unit: kWh.</summary>
    /// <remarks>Equation: Σ of the steps from the opening value on. A reading below its predecessor is a reset to 0, or an overrun: from the last
    /// fiftieth of a register (of whole decades, or of 16, 20, 24, 31 or 32 bits) to its first, or further from its top where that is the pace of the readings before.</remarks>
    public double CountedKwh => CounterStep.Along(OpeningKwh, Readings).Sum(step => step.Kwh);

    /// <summary>How often a reading was below its predecessor.</summary>
    public int Resets => CounterStep.Along(OpeningKwh, Readings).Count(step => step.WentBack);
}
