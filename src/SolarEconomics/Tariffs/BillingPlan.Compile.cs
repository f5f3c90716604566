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
        var tables = new Dictionary<Tariff, (DayCalendar Calendar, BandTable[] Tables)>(ReferenceEqualityComparer.Instance);
        var segments = new List<PlanSegment>();
        for (var period = 0; period < whole.Count; period++)
        {
            foreach (var (tariff, days) in history.During(whole[period].Cut))
            {
                var from = Second(days.Start, billingZone);
                var until = Second(days.End, billingZone);
                if (!tables.TryGetValue(tariff, out var known)) tables.Add(tariff, known = TablesOf(tariff));
                var clock = new IntervalClock(tariff.Zone ?? zone, known.Calendar);
                segments.Add(new PlanSegment(period, days, whole[period].Whole, tariff,
                    [.. known.Tables.Select(table => new SegmentEnergy(table, clock, ticks, from, until))]));
            }
        }
        return new BillingPlan(history, grid, [.. whole.Select(p => p.Cut)], segments);
    }

    private static (DayCalendar Calendar, BandTable[] Tables) TablesOf(Tariff tariff)
    {
        var calendar = new DayCalendar(tariff);
        return (calendar, [.. tariff.Parts.OfType<EnergyPart>().Select(part => new BandTable(part, calendar))]);
    }

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

    private static long Second(LocalDate day, DateTimeZone zone) => zone.AtStartOfDay(day).ToInstant().ToUnixTimeSeconds();
}
