using NodaTime;

namespace SolarEconomics;

/// <summary>Calendar days on a wall clock: where they start, how long they last, which of them an interval touches.</summary>
/// <remarks>A local day lasts 23, 24, 25, 23.5 or 24.5 hours, or no time at all where a zone crossed the date line.</remarks>
public static class LocalDays
{
    /// <summary>The first instant at which the clock shows the day, or a later one where the day never happened.</summary>
    /// <param name="day">Calendar day.</param>
    /// <param name="zone">The clock.</param>
    /// <remarks>Midnight itself may be skipped by the clock; the day then starts later. A skipped day starts where the next one does.</remarks>
    public static Instant StartOf(LocalDate day, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var map = zone.MapLocal(day.AtMidnight());
        return map.Count == 0 ? map.LateInterval.Start : map.First().ToInstant();
    }

    /// <summary>Length of a local day: 24 hours but for clock changes; zero for a day that never happened.</summary>
    /// <param name="day">Calendar day.</param>
    /// <param name="zone">The clock.</param>
    public static Duration LengthOf(LocalDate day, DateTimeZone zone) => StartOf(day.PlusDays(1), zone) - StartOf(day, zone);
}
