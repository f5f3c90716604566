using System.Globalization;

namespace SolarEconomics;

/// <summary>Hours of a day on the tariff's clock, half-open, which may run across midnight.</summary>
/// <remarks>Hours across midnight belong to the calendar day on which they lie: 23:00–08:00 on weekdays is 00:00–08:00 and
/// 23:00–24:00 of each weekday. The <c>default</c> is empty.</remarks>
public readonly record struct HourSpan
{
    private HourSpan(int fromMinute, int untilMinute)
    {
        FromMinute = fromMinute;
        UntilMinute = untilMinute;
    }

    /// <summary>Minute of the day at which the hours start. Range: 0 to 1439.</summary>
    public int FromMinute { get; }

    /// <summary>Minute of the day at which they end, excluded. Range: 1 to 1440; below <see cref="FromMinute"/> across midnight.</summary>
    public int UntilMinute { get; }

    /// <summary>Length by the clock. Unit: h. Range: 0 to 24.</summary>
    public double Hours => ((UntilMinute >= FromMinute ? 0 : 1440) + UntilMinute - FromMinute) / 60.0;

    /// <summary>All hours of a day.</summary>
    public static HourSpan WholeDay => new(0, 1440);

    /// <summary>Hours from their text.</summary>
    /// <param name="text">Such as <c>17:00-19:00</c> or <c>23:00-08:00</c>; 24:00 and 00:00 both end a day.</param>
    /// <exception cref="FormatException">The text is not of that form, or start and end are equal.</exception>
    public static HourSpan Parse(string text) => TryParse(text, out var hours) ? hours : throw Throw.NotHours(text);

    /// <summary>Hours from their text; false where the text is not of the form that <see cref="Parse"/> takes.</summary>
    /// <param name="text">Such as <c>17:00-19:00</c>.</param>
    /// <param name="hours">The hours.</param>
    public static bool TryParse(string text, out HourSpan hours)
    {
        ArgumentNullException.ThrowIfNull(text);
        hours = default;
        var ends = text.Replace('–', '-').Split('-', StringSplitOptions.TrimEntries);
        if (ends.Length != 2 || !Minute(ends[0], out var from) || !Minute(ends[1], out var until)) return false;
        if (until == 0) until = 1440;
        if (from == until || from == 1440) return false;
        hours = new HourSpan(from, until);
        return true;
    }

    /// <summary>Whether a minute of the day lies in the hours.</summary>
    /// <param name="minute">0 to 1439.</param>
    public bool Contains(int minute) =>
        FromMinute <= UntilMinute ? minute >= FromMinute && minute < UntilMinute : minute >= FromMinute || minute < UntilMinute;

    /// <summary>Prints <c>17:00–19:00</c>.</summary>
    public override string ToString() => Clock(FromMinute) + "–" + Clock(UntilMinute);

    internal static string Clock(int minute) => string.Create(CultureInfo.InvariantCulture, $"{minute / 60:00}:{minute % 60:00}");

    private static bool Minute(string text, out int minute)
    {
        minute = 0;
        var parts = text.Split(':');
        if (parts.Length != 2 || parts[1].Length != 2) return false;
        if (!int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var hour)) return false;
        if (!int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var rest)) return false;
        minute = (hour * 60) + rest;
        return rest < 60 && minute <= 1440;
    }
}
