using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>Writes a cell's value as a table in text form would hold it: ISO times, numbers with a decimal point.</summary>
internal static class CellText
{
    /// <summary>Workbooks count days from here; a time of day alone stands on this day.</summary>
    private static readonly DateTime DayZero = new(1899, 12, 31, 0, 0, 0, DateTimeKind.Unspecified);

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

    /// <summary>A date, a time of day, or both. Workbooks keep times as fractions of a day, so they are rounded to the second they mean.</summary>
    private static string Of(DateTime time)
    {
        var rounded = new DateTime((time.Ticks + (TimeSpan.TicksPerSecond / 2)) / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond, DateTimeKind.Unspecified);
        var pattern = rounded <= DayZero.AddDays(1) ? "HH:mm:ss" : rounded.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm:ss";
        return rounded.ToString(pattern, CultureInfo.InvariantCulture);
    }
}
