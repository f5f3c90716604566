using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>Writes the number of a cell as a table in text form would hold it: ISO times, numbers with a decimal point.</summary>
internal static class CellText
{
    private const long NearSecondTicks = 50 * TimeSpan.TicksPerMillisecond;

    /// <summary>The last day that a workbook can name, 31 December 9999.</summary>
    private const double LastDay = 2_958_465;

    /// <summary>Days up to here stand before the 29 February 1900 that workbooks count and the calendar does not have.</summary>
    private const double LastBeforeLeap = 60;

    private static readonly DateTime DayZero = new(1899, 12, 30, 0, 0, 0, DateTimeKind.Unspecified);
    private static readonly DateTime DayZeroOf1904 = new(1904, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);

    /// <summary>A date, a time of day, or both, from days since the workbook's first; <see langword="null"/> where no day has that number.</summary>
    internal static string? TimeOf(double days, bool from1904)
    {
        if (days is not (>= 0 and <= LastDay)) return null;
        // Below a whole day it is a time of day alone; 24:00 is the end of one.
        var ticks = Rounded(days);
        if (days < 1 || (days <= 1 && !from1904)) return TimeOfDay(ticks);
        var zero = from1904 ? DayZeroOf1904 : days < LastBeforeLeap ? DayZero.AddDays(1) : DayZero;
        if (ticks > (DateTime.MaxValue - zero).Ticks) return null;
        var time = zero.AddTicks(ticks);
        var pattern = time.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : ticks % TimeSpan.TicksPerSecond == 0 ? "yyyy-MM-dd HH:mm:ss" : "yyyy-MM-dd HH:mm:ss.fff";
        return time.ToString(pattern, CultureInfo.InvariantCulture);
    }

    private static string TimeOfDay(long ticks)
    {
        var milliseconds = ticks / TimeSpan.TicksPerMillisecond;
        var whole = string.Create(CultureInfo.InvariantCulture, $"{milliseconds / 3_600_000:00}:{milliseconds / 60_000 % 60:00}:{milliseconds / 1000 % 60:00}");
        return milliseconds % 1000 == 0 ? whole : string.Create(CultureInfo.InvariantCulture, $"{whole}.{milliseconds % 1000:000}");
    }

    /// <summary>Workbooks keep times as fractions of a day, good to a few milliseconds: what is that near to a second is meant to be it.</summary>
    private static long Rounded(double days)
    {
        var ticks = (long)Math.Round(days * TimeSpan.TicksPerDay);
        var second = Rounded(ticks, TimeSpan.TicksPerSecond);
        return Math.Abs(ticks - second) <= NearSecondTicks ? second : Rounded(ticks, TimeSpan.TicksPerMillisecond);
    }

    private static long Rounded(long ticks, long unit) => (ticks + (unit / 2)) / unit * unit;
}
