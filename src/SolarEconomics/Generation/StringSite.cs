namespace SolarEconomics;

/// <summary>The temperatures and the battery that a string meets at its place.</summary>
/// <param name="ColdestC">Lowest temperature that the local code or a record of many years names, not a mean. Unit: °C. <see langword="null"/> where unknown.</param>
/// <param name="HottestCellC">Highest cell temperature: hottest air plus about 30 K in the open, 40 K on a roof. Unit: °C. <see langword="null"/> where unknown.</param>
public sealed record StringSite(double? ColdestC, double? HottestCellC)
{
    /// <summary>Absorption voltage of the battery, behind a charge controller. Unit: V.</summary>
    public double? AbsorptionV { get; init; }

    /// <summary>Lowest voltage of the battery at which it is charged hard: there a current limit clips most. Unit: V.</summary>
    public double? EmptyV { get; init; }
}
