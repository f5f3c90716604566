namespace SolarEconomics;

/// <summary>One named part of the wanted use.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kwh">Energy wanted in each interval. Unit: kWh.</param>
public sealed record LoadPart(string Name, ReadOnlyMemory<double> Kwh)
{
    /// <summary>When energy is short, parts of a higher number go first. Range: any. Default: 0, the last to go.</summary>
    public int SheddingOrder { get; init; }

    /// <summary>An off-grid control switches it off while the battery is less full than this share. Range: 0 to 1. Default: 0, never on purpose.</summary>
    public double OffBelowShare { get; init => field = Require.Fraction(value, nameof(OffBelowShare)); }
}
