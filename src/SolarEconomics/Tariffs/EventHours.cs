using NodaTime;
using NodaTime.TimeZones;

namespace SolarEconomics;

/// <summary>Hours of a day as intervals of a plan's grid.</summary>
internal static class EventHours
{
    /// <summary>Interval ranges of some hours of a day; hours across midnight belong to the day on which they lie.</summary>
    internal static IEnumerable<(int First, int End)> Of(LocalDate day, IReadOnlyList<HourSpan> hours, DateTimeZone zone, PlanTicks ticks)
    {
        foreach (var span in hours)
        {
            if (span.FromMinute < span.UntilMinute)
            {
                foreach (var range in Ranges(day, span.FromMinute, span.UntilMinute, zone, ticks)) yield return range;
            }
            else
            {
                foreach (var range in Ranges(day, 0, span.UntilMinute, zone, ticks)) yield return range;
                foreach (var range in Ranges(day, span.FromMinute, BandTable.MinutesPerDay, zone, ticks)) yield return range;
            }
        }
    }

    internal static double Sum(ReadOnlySpan<double> kwh, IEnumerable<(int First, int End)> ranges)
    {
        var sum = 0.0;
        foreach (var (first, end) in ranges) sum += BandSums.Total(kwh[first..Math.Max(first, end)]);
        return sum;
    }

    /// <summary>One range for each offset that the clock has on the day: a skipped hour holds nothing, a repeated one counts both times.</summary>
    private static IEnumerable<(int First, int End)> Ranges(LocalDate day, int from, int until, DateTimeZone zone, PlanTicks ticks)
    {
        var whole = new Interval(zone.AtStartOfDay(day).ToInstant(), zone.AtStartOfDay(day.PlusDays(1)).ToInstant());
        foreach (var stretch in zone.GetZoneIntervals(whole))
        {
            var start = Instant.Max(At(day, from, stretch), stretch.HasStart ? stretch.Start : Instant.MinValue);
            var end = Instant.Min(At(day, until, stretch), stretch.HasEnd ? stretch.End : Instant.MaxValue);
            if (start < end) yield return (ticks.FirstFrom(start.ToUnixTimeSeconds()), ticks.FirstFrom(end.ToUnixTimeSeconds()));
        }
    }

    private static Instant At(LocalDate day, int minute, ZoneInterval stretch) =>
        day.AtMidnight().PlusMinutes(minute).WithOffset(stretch.WallOffset).ToInstant();
}
