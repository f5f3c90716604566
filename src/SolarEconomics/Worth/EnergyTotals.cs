namespace SolarEconomics;

/// <summary>Where the generation of a period went. Unit: kWh, at the board (AC).</summary>
/// <param name="GeneratedKwh">All generation.</param>
/// <param name="UsedDirectlyKwh">Used on site when made.</param>
/// <param name="UsedFromStorageKwh">Used on site out of the battery.</param>
/// <param name="ExportedKwh">Sent to the grid.</param>
/// <param name="LostKwh">Lost in conversion, storage and standby.</param>
/// <param name="ImportedKwh">Bought from the grid.</param>
/// <param name="CensoredHours">Hours in which more could have been made than was counted: that energy is in no record.</param>
public sealed record EnergyTotals(
    double GeneratedKwh,
    double UsedDirectlyKwh,
    double UsedFromStorageKwh,
    double ExportedKwh,
    double LostKwh,
    double ImportedKwh,
    double CensoredHours)
{
    /// <summary>Share of the generation used on site, directly or from the battery; <see langword="null"/> where nothing was generated.</summary>
    /// <remarks>Equation: (direct + PV-sourced delivered) ÷ usable generation.</remarks>
    public double? SelfConsumption => GeneratedKwh > 0 ? (UsedDirectlyKwh + UsedFromStorageKwh) / GeneratedKwh : null;
}
