using NodaTime;

namespace SolarEconomics;

/// <summary>The local days that readings touch: an interval touches each day with which it shares time.</summary>
internal static class TouchedDays
{
    internal static IReadOnlyCollection<LocalDate> Of(RecordContent content)
    {
        var days = new SortedSet<LocalDate>();
        foreach (var channel in content.Channels) Add(channel, content.Clock, days);
        foreach (var counter in content.Counters)
            foreach (var reading in counter.Readings) days.Add(reading.Date);
        return days;
    }

    private static void Add(Channel channel, DateTimeZone clock, SortedSet<LocalDate> days)
    {
        // Rows stand in order of time, so nearly all lie in the day of the row before.
        var (from, to) = (long.MaxValue, long.MinValue);
        var times = channel.Times;
        for (var i = 0; i < channel.Count; i++)
        {
            var (start, end) = (times.StartTicks(i), times.EndTicks(i));
            if ((start >= from && end <= to) || channel.Quality[i].HasFlag(Quality.Missing)) continue;
            var day = times.Start(i).InZone(clock).Date;
            do
            {
                days.Add(day);
                (from, to) = (LocalDays.StartOf(day, clock).ToUnixTimeTicks(), LocalDays.StartOf(day.PlusDays(1), clock).ToUnixTimeTicks());
                day = day.PlusDays(1);
            }
            while (to < end);
        }
    }
}
