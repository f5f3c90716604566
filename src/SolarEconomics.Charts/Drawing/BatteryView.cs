using System.Globalization;
using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Some days of a battery: the charge at each interval's edge, what went in and out by the hour, and each day's lowest and highest charge.</summary>
internal sealed record BatteryView(LocalDate Start, LocalDate End, double UsableKwh, IReadOnlyList<BatteryPoint> Points, IReadOnlyList<BatteryHour> Hours, IReadOnlyList<BatteryDay> Days)
{
    /// <summary>Beyond this many days hours are too narrow to be seen.</summary>
    private const int MostDaysByHour = 14;

    internal bool IsDaily => Days.Count > MostDaysByHour;

    internal double Top => Math.Max(UsableKwh, IsDaily ? 0 : Hours.Max(h => h.InKwh)) * 1.06;

    internal double Bottom => IsDaily ? 0 : -1.06 * Hours.Max(h => h.ToUseKwh + h.ToExportKwh);

    /// <summary>Local time without an offset, as plotly reads it.</summary>
    internal static string Iso(LocalDateTime at) => at.ToString("uuuu-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);

    internal static BatteryView Of(EnergyFlows flows, LocalDate? from, int days)
    {
        var time = flows.Time;
        var local = Enumerable.Range(0, time.Count).Select(time.LocalStartOf).ToArray();
        var start = from ?? DaysAround(Busiest(flows, local), days, local[0].Date, local[^1].Date);
        var end = start.PlusDays(days);
        var chosen = Enumerable.Range(0, time.Count).Where(i => local[i].Date >= start && local[i].Date < end).ToArray();
        if (chosen.Length == 0) throw Throw.NothingToDraw(0, $"intervals from {start:uuuu-MM-dd} to {end.PlusDays(-1):uuuu-MM-dd}", 1, "options");
        var stored = flows.StoredKwh.ToArray();
        var points = chosen.Select(i => new BatteryPoint(local[i], stored[i])).ToList();
        points.Add(new BatteryPoint(time.StartOf(chosen[^1]).Plus(Duration.FromHours(time.Hours[chosen[^1]])).InZone(time.Zone).LocalDateTime, stored[chosen[^1] + 1]));
        var hours = chosen.GroupBy(i => local[i].Date + new LocalTime(local[i].Hour, 0)).Select(h => new BatteryHour(h.Key, h.Sum(i => In(flows, i)),
            h.Sum(i => flows[FlowPath.BatteryToUse][i] + flows[FlowPath.BatteryToStandby][i]), h.Sum(i => flows[FlowPath.BatteryToExport][i]))).ToList();
        var byDay = chosen.GroupBy(i => local[i].Date).Select(d => new BatteryDay(d.Key, d.Min(i => Math.Min(stored[i], stored[i + 1])), d.Max(i => Math.Max(stored[i], stored[i + 1])),
            d.Sum(i => In(flows, i)), d.Sum(i => Out(flows, i)))).ToList();
        return new BatteryView(start, end, flows.System.Battery!.UsableKwh, points, hours, byDay);
    }

    /// <summary>First of some days with one in their middle, moved so that as many of them as can be lie within the run.</summary>
    private static LocalDate DaysAround(LocalDate middle, int days, LocalDate first, LocalDate last) =>
        LocalDate.Max(first, LocalDate.Min(middle.PlusDays(-(days - 1) / 2), last.PlusDays(1 - days)));

    private static LocalDate Busiest(EnergyFlows flows, LocalDateTime[] local) =>
        Enumerable.Range(0, local.Length).GroupBy(i => local[i].Date).MaxBy(d => d.Sum(i => Out(flows, i)))!.Key;

    private static double In(EnergyFlows flows, int i) => flows[FlowPath.ArrayToBattery][i] + flows[FlowPath.GridToBattery][i] + flows[FlowPath.GeneratorToBattery][i];

    private static double Out(EnergyFlows flows, int i) => flows[FlowPath.BatteryToUse][i] + flows[FlowPath.BatteryToStandby][i] + flows[FlowPath.BatteryToExport][i];
}
