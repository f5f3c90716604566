namespace SolarEconomics;

/// <summary>The lowest and highest energy on every way between that records allow. A high end may be without limit where nothing recorded bounds it.</summary>
/// <param name="ArrayToUse">Generation used as it is made. Without a battery this is the self-use.</param>
/// <param name="ArrayToBattery">Generation stored.</param>
/// <param name="ArrayToExport">Generation sent to the grid.</param>
/// <param name="KeptOnSite">Generation used or stored: the self-use before the battery's losses.</param>
/// <param name="GridToUse">Import used as it comes.</param>
/// <param name="GridToBattery">Import stored.</param>
/// <param name="BatteryToUse">Discharge used.</param>
/// <param name="BatteryToExport">Discharge sent to the grid.</param>
/// <param name="Records">The recorded totals, each cut to what the others leave possible.</param>
public sealed record FlowBounds(
    EnergyRange ArrayToUse,
    EnergyRange ArrayToBattery,
    EnergyRange ArrayToExport,
    EnergyRange KeptOnSite,
    EnergyRange GridToUse,
    EnergyRange GridToBattery,
    EnergyRange BatteryToUse,
    EnergyRange BatteryToExport,
    FlowWindow Records)
{
    /// <summary>The ways of the network in its own order.</summary>
    internal static FlowBounds Of(EnergyRange[] ways) => new(ways[8], ways[9], ways[10], ways[11], ways[12], ways[13], ways[14], ways[15], new FlowWindow
    {
        Generation = ways[0], Import = ways[1], Export = ways[2], NetImport = ways[3], Charge = ways[4], Discharge = ways[5], HeldByBattery = ways[6], Use = ways[7],
    });
}
