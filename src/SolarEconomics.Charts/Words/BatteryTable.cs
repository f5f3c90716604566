using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>The numbers behind the picture of a battery.</summary>
internal static class BatteryTable
{
    internal static FindingTable Of(BatteryView view, CultureInfo culture) => view.IsDaily
        ? new FindingTable("The battery by day (kWh)", ["Day", "Lowest charge (kWh)", "Highest charge (kWh)", "Into the battery (kWh)", "Out of it (kWh)"],
            [.. view.Days.Select(IReadOnlyList<string> (d) => [PeopleNumber.Date(d.Date, culture), Number(d.LowKwh, culture), Number(d.HighKwh, culture), Number(d.InKwh, culture), Number(d.OutKwh, culture)])])
        : new FindingTable("The battery by hour (kWh)", ["Hour", "Into the battery (kWh)", "Out to use (kWh)", "Out to export (kWh)", "Stored at its start (kWh)"],
            [.. view.Hours.Select(IReadOnlyList<string> (h) =>
            [
                h.Start.ToString("d MMM uuuu, HH:mm", culture), Number(h.InKwh, culture), Number(h.ToUseKwh, culture), Number(h.ToExportKwh, culture),
                Number(view.Points.First(p => p.At >= h.Start).StoredKwh, culture),
            ])]);

    private static string Number(double kwh, CultureInfo culture) => PeopleNumber.Number(kwh, 2, culture);
}
