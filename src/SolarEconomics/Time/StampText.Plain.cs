namespace SolarEconomics;

internal static partial class StampText
{
    private const int WithMinutes = 16;
    private const int WithSeconds = 19;

    private static ReadOnlySpan<byte> DaysOfMonth => [0, 31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>Reads yyyy-MM-dd HH:mm with or without seconds, by far the most common form, without looking for any other. What is not exactly so is left to the general way.</summary>
    private static bool TryPlain(ReadOnlySpan<char> text, out Stamp stamp)
    {
        stamp = default;
        if (text.Length != WithMinutes && text.Length != WithSeconds) return false;
        if (text[4] != '-' || text[7] != '-' || text[13] != ':' || text[10] is not (' ' or 'T')) return false;
        // Digits are judged all at once: whatever is none leaves a number above 9 in one of the places.
        var worst = 0u;
        var year = (Two(text, 0, ref worst) * 100) + Two(text, 2, ref worst);
        var month = Two(text, 5, ref worst);
        var day = Two(text, 8, ref worst);
        var hour = Two(text, 11, ref worst);
        var minute = Two(text, 14, ref worst);
        var second = 0u;
        if (text.Length == WithSeconds)
        {
            if (text[16] != ':') return false;
            second = Two(text, 17, ref worst);
        }
        if (worst > 9 || year is < FirstYear or > LastYear || month - 1 > 11 || day - 1 >= DaysOfMonth[(int)month] || hour > 23 || minute > 59 || second > 59) return false;
        if (month == 2 && day == 29 && !DateTime.IsLeapYear((int)year)) return false;
        stamp = new Stamp((DayNumber((int)year, (int)month, (int)day) * MsPerDay) + (((hour * 60L) + minute) * MsPerMinute) + (second * 1000L), null, StampFineness.Time);
        return true;
    }

    /// <summary>Days since 1970-01-01. Years are counted from March, so that the leap day is the last of its year.</summary>
    private static long DayNumber(int year, int month, int day)
    {
        var fromMarch = month <= 2 ? year - 1 : year;
        var months = month <= 2 ? month + 9 : month - 3;
        return (fromMarch * 365L) + (fromMarch / 4) - (fromMarch / 100) + (fromMarch / 400) + (((months * 153) + 2) / 5) + day - 719_469;
    }

    private static uint Two(ReadOnlySpan<char> text, int at, ref uint worst)
    {
        var (tens, ones) = ((uint)(text[at] - '0'), (uint)(text[at + 1] - '0'));
        worst = Math.Max(worst, Math.Max(tens, ones));
        return (tens * 10) + ones;
    }
}
