using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>Writes a cell's value as a table in text form would hold it: ISO times, numbers with a decimal point.</summary>
internal static class CellText
{
    /// <summary>Workbooks count days from here; a time of day alone stands on this day.</summary>
    private static readonly DateTime DayZero = new(1899, 12, 31, 0, 0, 0, DateTimeKind.Unspecified);

    private const long NearSecondTicks = 50 * TimeSpan.TicksPerMillisecond;

    internal static string Of(object? value) => value switch
    {
        null => "",
        string text => text,
        DateTime time => Of(time),
        TimeSpan time => Of(DayZero + time),
        bool flag => flag ? "1" : "0",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>A date, a time of day, or both. Workbooks keep times as fractions of a day, good to a few milliseconds: what is that near to a second is meant to be it.</summary>
    private static string Of(DateTime time)
    {
        var second = Rounded(time.Ticks, TimeSpan.TicksPerSecond);
        var ticks = Math.Abs(time.Ticks - second) <= NearSecondTicks ? second : Rounded(time.Ticks, TimeSpan.TicksPerMillisecond);
        var rounded = new DateTime(ticks, DateTimeKind.Unspecified);
        var pattern = rounded <= DayZero.AddDays(1) ? "HH:mm:ss" : rounded.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : ticks == second ? "yyyy-MM-dd HH:mm:ss" : "yyyy-MM-dd HH:mm:ss.fff";
        return rounded.ToString(pattern, CultureInfo.InvariantCulture);
    }

    private static long Rounded(long ticks, long unit) => (ticks + (unit / 2)) / unit * unit;
}
