namespace SolarEconomics;

/// <summary>What one device of a plant makes of a weather record.</summary>
/// <param name="Device">The device.</param>
/// <param name="Placements">The arrays behind it on that day.</param>
/// <param name="Result">Power step by step, and every loss.</param>
public sealed record DeviceOutput(Device Device, IReadOnlyList<Placement> Placements, GenerationResult Result)
{
    /// <summary>Rated power of the arrays. Unit: kWp.</summary>
    public double RatedKwp => Placements.Sum(p => p.Array.RatedKwp);

    /// <summary>Rated power of the arrays over that of the inverter.</summary>
    public double DcAcRatio => RatedKwp / (Result.Model.Inverter.RatedAcW / 1000);
}
