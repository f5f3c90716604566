using NodaTime;

namespace SolarEconomics;

/// <summary>Minute of the day, day of the week, local day and month at the start of each interval, in plain arrays for loops.</summary>
internal sealed class LocalClock
{
    private static readonly LocalDate s_epoch = new(1970, 1, 1);

    internal LocalClock(Instant[] starts, DateTimeZone zone)
    {
        MinuteOfDay = new int[starts.Length];
        DayNumber = new int[starts.Length];
        MonthNumber = new int[starts.Length];
        Fill(starts, zone);
    }

    internal int[] MinuteOfDay { get; }

    /// <summary>Days since 1 January 1970.</summary>
    internal int[] DayNumber { get; }

    /// <summary>Months since year 0: year · 12 + month − 1.</summary>
    internal int[] MonthNumber { get; }

    internal LocalDate DayOf(int interval) => s_epoch.PlusDays(DayNumber[interval]);

    internal IsoDayOfWeek WeekdayOf(int interval) => WeekdayOfDay(DayNumber[interval]);

    /// <summary>1 January 1970 was a Thursday.</summary>
    internal static IsoDayOfWeek WeekdayOfDay(int dayNumber) => (IsoDayOfWeek)((((dayNumber + 3) % 7 + 7) % 7) + 1);

    private void Fill(Instant[] starts, DateTimeZone zone)
    {
        var stretch = zone.GetZoneInterval(starts[0]);
        var (lastDay, month) = (int.MinValue, 0);
        for (var i = 0; i < starts.Length; i++)
        {
            if (!stretch.Contains(starts[i])) stretch = zone.GetZoneInterval(starts[i]);
            var ticks = starts[i].ToUnixTimeTicks() + stretch.WallOffset.Ticks;
            var day = (int)Math.DivRem(ticks, NodaConstants.TicksPerDay, out var rest);
            if (rest < 0) (day, rest) = (day - 1, rest + NodaConstants.TicksPerDay);
            if (day != lastDay)
            {
                var date = s_epoch.PlusDays(day);
                (lastDay, month) = (day, (date.Year * 12) + date.Month - 1);
            }
            (DayNumber[i], MonthNumber[i], MinuteOfDay[i]) = (day, month, (int)(rest / NodaConstants.TicksPerMinute));
        }
    }
}
