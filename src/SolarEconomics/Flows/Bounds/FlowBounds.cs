using System.Globalization;

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
    FlowWindow Records) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(Range(KeptOnSite, culture), $"of {Range(Records.Generation, culture)} made {Kept} on site. {Doubt(culture)}")
    {
        Tables = [Table(culture)],
        Notes = ["Curtailed energy is in no counter and so in none of these flows; standby of the plant counts as use."],
        Cautions = [Cautions.Records],
    };

    internal string Kept => Records.Charge.HighKwh > 0 || Records.Discharge.HighKwh > 0 ? "was used or stored" : "was used";

    internal string Doubt(CultureInfo culture) => KeptOnSite.WidthKwh >= 0.5
        ? $"The records allow every value between: {Range(ArrayToExport, culture)} went to the grid."
        : ArrayToUse.WidthKwh >= 0.5 ? $"That is certain; how much of it was used as it was made is not: {Range(ArrayToUse, culture)}."
        : "The records leave no doubt about it.";

    internal FindingTable Table(CultureInfo culture) => new("Flows between (kWh)", ["From and to", "Lowest", "Highest"],
    [
        Row("array to use", ArrayToUse, culture), Row("array to battery", ArrayToBattery, culture), Row("array to export", ArrayToExport, culture),
        Row("grid to use", GridToUse, culture), Row("grid to battery", GridToBattery, culture),
        Row("battery to use", BatteryToUse, culture), Row("battery to export", BatteryToExport, culture),
    ]);

    internal static string Range(EnergyRange range, CultureInfo culture) =>
        range.WidthKwh < 0.5 ? Wording.Kwh(range.MiddleKwh, culture)
        : double.IsPositiveInfinity(range.HighKwh) ? $"at least {Wording.Kwh(range.LowKwh, culture)}"
        : $"{range.LowKwh.ToString("#,0", culture)} to {Wording.Kwh(range.HighKwh, culture)}";

    private static string[] Row(string name, EnergyRange range, CultureInfo culture) =>
        [name, range.LowKwh.ToString("#,0", culture), double.IsPositiveInfinity(range.HighKwh) ? "no upper end" : range.HighKwh.ToString("#,0", culture)];

    /// <summary>The ways of the network in its own order.</summary>
    internal static FlowBounds Of(EnergyRange[] ways) => new(ways[8], ways[9], ways[10], ways[11], ways[12], ways[13], ways[14], ways[15], new FlowWindow
    {
        Generation = ways[0], Import = ways[1], Export = ways[2], NetImport = ways[3], Charge = ways[4], Discharge = ways[5], HeldByBattery = ways[6], Use = ways[7],
    });
}
