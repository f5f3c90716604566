using System.Globalization;

namespace SolarEconomics;

/// <content>What a reader would ask back: it can be, but seldom is what was meant.</content>
public sealed partial class EnergyFlows
{
    /// <summary>A home's battery holds its use of hours to a few days; more than this is often Wh that were meant.</summary>
    private const double ManyDays = 14;

    private IEnumerable<string> Doubts(FlowTotals totals, CultureInfo culture)
    {
        var usePerDay = totals.Hours > 0 ? totals.WantedKwh / totals.Hours * 24 : 0;
        if (System.Battery is { } battery && usePerDay > DustKwh && battery.UsableKwh > ManyDays * usePerDay)
            yield return $"Please check: the battery's usable {battery.UsableKwh.ToString("#,0.#", culture)} kWh hold the use of {(battery.UsableKwh / usePerDay).ToString("#,0", culture)} days. "
                + $"A capacity in Wh is divided by {1000.ToString("#,0", culture)}.";
        if (System.Battery is { UsableKwh: > 0, MostChargeKw: 0 })
            yield return "Please check: the battery's highest charging power is 0 kW, so it is never charged.";
        foreach (var load in Conditions.Deferrable.Where(load => load.KwhPerDay > load.MostKwhPerDay + DustKwh)) yield return TooMuchOf(load, culture);
    }

    private static string TooMuchOf(DeferrableLoad load, CultureInfo culture) =>
        $"Please check: the waiting load \"{load.Name}\" asks for {load.KwhPerDay.ToString("#,0.##", culture)} kWh a day, and its hours {load.Between} at {load.MostKw.ToString("#,0.###", culture)} kW hold "
        + $"{load.MostKwhPerDay.ToString("#,0.##", culture)}: whatever the plant does, the rest is late or given up.";
}
