using NodaTime;
using NodaTime.TimeZones;

namespace SolarEconomics;

/// <summary>Walks forward through real time and tells class of day and second of day on a tariff's clock.</summary>
internal sealed class IntervalClock(DateTimeZone zone, DayCalendar calendar)
{
    private const long SecondsPerDay = 86_400;
    private static readonly LocalDate Epoch = new(1970, 1, 1);
    private long _from = long.MaxValue;
    private long _offset;
    private long _day = long.MinValue;

    /// <summary>Class of the day on which the clock stands.</summary>
    internal int DayClass { get; private set; }

    /// <summary>Second of that day, by its hands: it jumps where the clock changes.</summary>
    internal int SecondOfDay { get; private set; }

    /// <summary>The next time at which the clock changes, in seconds of real time.</summary>
    internal long NextChange { get; private set; } = long.MinValue;

    internal void MoveTo(long second)
    {
        if (second < _from || second >= NextChange) EnterZoneInterval(second);
        var local = second + _offset;
        var day = Math.DivRem(local, SecondsPerDay, out var rest);
        if (rest < 0)
        {
            day--;
            rest += SecondsPerDay;
        }
        SecondOfDay = (int)rest;
        if (day == _day) return;
        _day = day;
        DayClass = calendar.ClassOf(Epoch.PlusDays((int)day));
    }

    private void EnterZoneInterval(long second)
    {
        ZoneInterval interval = zone.GetZoneInterval(Instant.FromUnixTimeSeconds(second));
        _from = interval.HasStart ? interval.Start.ToUnixTimeSeconds() : long.MinValue;
        NextChange = interval.HasEnd ? interval.End.ToUnixTimeSeconds() : long.MaxValue;
        _offset = interval.WallOffset.Seconds;
    }
}
