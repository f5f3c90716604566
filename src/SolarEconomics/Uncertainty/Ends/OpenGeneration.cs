namespace SolarEconomics;

/// <summary>Generation of one place that the records leave open, at its measurement point, with the efficiencies from there to the board.</summary>
/// <remarks>The efficiency may be another in each interval, within its range, as it is in an inverter.</remarks>
internal sealed class OpenGeneration(string device, int count, double toAcLow, double toAcHigh)
{
    internal string Device { get; } = device;

    internal double ToAcLow { get; } = toAcLow;

    internal double ToAcHigh { get; } = toAcHigh;

    internal OpenFlow Flow { get; } = new(count);
}
