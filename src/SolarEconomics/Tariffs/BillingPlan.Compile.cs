using NodaTime;

namespace SolarEconomics;

/// <content>Cutting the grid into periods and versions, and laying the rates on it.</content>
public sealed partial class BillingPlan
{
    internal static BillingPlan Compile(TariffHistory history, IntervalGrid grid, DateTimeZone zone, BillingOptions options)
    {
        ArgumentNullException.ThrowIfNull(zone);
        ArgumentNullException.ThrowIfNull(options);
        var ticks = new PlanTicks(grid);
        var billingZone = options.BillingZone ?? zone;
        var whole = WholePeriods(options.Periods, DaysTouched(grid, billingZone));
        var known = new Dictionary<Tariff, (DayCalendar Calendar, Dictionary<EnergyPart, BandTable> Tables)>(ReferenceEqualityComparer.Instance);
        var segments = new List<PlanSegment>();
        for (var period = 0; period < whole.Count; period++)
        {
            var versions = history.During(whole[period].Cut).ToList();
            // The version that begins within the bill says how its energy is split.
            var byDays = versions.Skip(1).Any(v => v.Version.EnergyAtChange == EnergySplit.ByDays);
            foreach (var (tariff, days) in versions)
            {
                var (startsPeriod, endsPeriod) = (days.Start == whole[period].Cut.Start, days.End == whole[period].Cut.End);
                if (!known.TryGetValue(tariff, out var made))
                    known.Add(tariff, made = (new DayCalendar(tariff), new Dictionary<EnergyPart, BandTable>(ReferenceEqualityComparer.Instance)));
                var context = new SegmentContext(tariff, days, whole[period].Whole, startsPeriod, endsPeriod, zone, billingZone, ticks, made.Calendar, made.Tables)
                {
                    EnergyDays = byDays ? whole[period].Cut : days,
                };
                var parts = tariff.Parts.Where(options.Applies).ToList();
                segments.Add(new PlanSegment(period, tariff, [.. parts.Select(part => part.On(context))], parts));
            }
        }
        return new BillingPlan(history, grid, billingZone, [.. whole.Select(p => p.Cut)], segments, Unmet(history, options));
    }

    private static IReadOnlyList<string> Unmet(TariffHistory history, BillingOptions options) =>
        [.. history.Versions.SelectMany(v => v.Parts).Where(p => !options.Applies(p)).Select(p => $"Not counted: \"{p.Name}\", as nothing says that its condition is met: {p.Condition}.").Distinct(StringComparer.Ordinal)];

    private static DateSpan DaysTouched(IntervalGrid grid, DateTimeZone zone)
    {
        if (grid.Count == 0) return default;
        var first = grid.Start.InZone(zone).Date;
        return new DateSpan(first, grid.StartOf(grid.Count - 1).InZone(zone).Date.PlusDays(1));
    }

    private static List<(DateSpan Cut, DateSpan Whole)> WholePeriods(IReadOnlyList<DateSpan>? periods, DateSpan days)
    {
        var cuts = new List<(DateSpan Cut, DateSpan Whole)>();
        DateSpan? before = null;
        foreach (var period in periods ?? CalendarMonths(days))
        {
            if (before is { } earlier && period.Start < earlier.End) throw Throw.PeriodsOverlap(earlier, period);
            before = period;
            var cut = period.Overlap(days);
            if (cut.Days > 0) cuts.Add((cut, period));
        }
        return cuts;
    }

    private static List<DateSpan> CalendarMonths(DateSpan days)
    {
        var months = new List<DateSpan>();
        if (days.Days == 0) return months;
        for (var month = new LocalDate(days.Start.Year, days.Start.Month, 1); month < days.End; month = month.PlusMonths(1))
            months.Add(new DateSpan(month, month.PlusMonths(1)));
        return months;
    }
}
