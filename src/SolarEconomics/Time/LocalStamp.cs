using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Local times as tables of prices and weather write them: year first, to the minute or second, with a space or a T.</summary>
internal static class LocalStamp
{
    private static readonly LocalDateTimePattern[] Patterns =
    [
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm"), LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm:ss"),
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm"), LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss"),
    ];

    /// <summary>The local time; <see langword="null"/> for another text.</summary>
    internal static LocalDateTime? Parsed(string text)
    {
        foreach (var pattern in Patterns)
            if (pattern.Parse(text).TryGetValue(default, out var local)) return local;
        return null;
    }

    /// <summary>The instant, a repeated hour told by the order of the rows; <see langword="null"/> for a time that was skipped.</summary>
    internal static Instant? InRowOrder(LocalDateTime local, DateTimeZone zone, Instant rowBefore)
    {
        var map = zone.MapLocal(local);
        if (map.Count == 0) return null;
        var first = map.First().ToInstant();
        return map.Count == 2 && first <= rowBefore ? map.Last().ToInstant() : first;
    }
}
