using NodaTime;

namespace SolarEconomics;

/// <summary>Hours of a day as intervals of a plan's grid.</summary>
internal static class EventHours
{
    /// <summary>Interval ranges of some hours of a day; hours across midnight belong to the day on which they lie.</summary>
    internal static IEnumerable<(int First, int End)> Of(LocalDate day, IReadOnlyList<HourSpan> hours, DateTimeZone zone, PlanTicks ticks)
    {
        foreach (var span in hours)
        {
            if (span.FromMinute < span.UntilMinute) yield return Range(day, span.FromMinute, span.UntilMinute, zone, ticks);
            else
            {
                yield return Range(day, 0, span.UntilMinute, zone, ticks);
                yield return Range(day, span.FromMinute, BandTable.MinutesPerDay, zone, ticks);
            }
        }
    }

    internal static double Sum(ReadOnlySpan<double> kwh, IEnumerable<(int First, int End)> ranges)
    {
        var sum = 0.0;
        foreach (var (first, end) in ranges) sum += BandSums.Total(kwh[first..Math.Max(first, end)]);
        return sum;
    }

    private static (int First, int End) Range(LocalDate day, int from, int until, DateTimeZone zone, PlanTicks ticks) =>
        (ticks.FirstFrom(Second(day, from, zone)), ticks.FirstFrom(Second(day, until, zone)));

    private static long Second(LocalDate day, int minute, DateTimeZone zone) =>
        zone.AtLeniently(day.AtMidnight().PlusMinutes(minute)).ToInstant().ToUnixTimeSeconds();
}
