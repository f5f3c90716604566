namespace SolarEconomics;

/// <summary>Reads times from text: dates in three orders, with month names, compact, by week and by day of the year, with seconds, fractions, am and pm, offsets.</summary>
/// <remarks>Strict: anything left over makes it no time. Years 1900 to 2199, so that every stamp is an instant in every zone.</remarks>
internal static partial class StampText
{
    private const long MsPerMinute = 60_000;
    private const long MsPerDay = 86_400_000;
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    /// <summary>A year of two digits is of this century: no record of readings is older.</summary>
    private const int ShortYears = 2000;

    internal static bool TryRead(ReadOnlySpan<char> text, DateOrder order, out Stamp stamp)
    {
        if (TryPlain(text, out stamp)) return true;
        var scan = new Scan(text.Trim());
        if (!TryAnyDate(ref scan, order, out var days, out var fineness)) return false;
        if (scan.AtEnd)
        {
            stamp = new Stamp(days * MsPerDay, null, fineness);
            return true;
        }
        if (fineness != StampFineness.Day || !(scan.TakeDateTimeGap() || IsCompact(text.Trim()))) return false;
        if (!TryTimeOfDay(ref scan, out var ms)) return false;
        if (!TryOffset(ref scan, out var offset) || !scan.AtEnd) return false;
        stamp = new Stamp((days * MsPerDay) + ms, offset, StampFineness.Time);
        return true;
    }

    /// <summary>Reads a time of day alone, for records with date and time in two columns.</summary>
    internal static bool TryTime(ReadOnlySpan<char> text, out long msOfDay)
    {
        var scan = new Scan(text.Trim());
        return TryTimeOfDay(ref scan, out msOfDay) && scan.AtEnd;
    }

    /// <summary>Whether a text is one number of date and time: 202403010930, with or without seconds.</summary>
    private static bool IsCompact(ReadOnlySpan<char> text) => text.Length is 12 or 14 && text.IndexOfAnyExceptInRange('0', '9') < 0;

    private static bool TryAnyDate(ref Scan scan, DateOrder order, out long days, out StampFineness fineness)
    {
        var start = scan;
        if (TryDate(ref scan, order, out days, out fineness)) return true;
        scan = start;
        if (TryNamedParts(ref scan, out days, out fineness)) return true;
        scan = start;
        // A word in front that is no part of the date may be the day of the week: Wed 01.05.2024.
        if (!scan.TakeWord(out var word) || !MonthNames.IsWeekday(word) || !scan.TakeAnyOf(" .,")) return false;
        start = scan;
        if (TryDate(ref scan, order, out days, out fineness)) return true;
        scan = start;
        return TryNamedParts(ref scan, out days, out fineness);
    }

    private static bool TryDate(ref Scan scan, DateOrder order, out long days, out StampFineness fineness)
    {
        days = 0;
        fineness = StampFineness.Day;
        if (!scan.TakeDigits(8, out var a, out var aLength)) return false;
        if (aLength == 8) return TryDay(a / 10_000, a / 100 % 100, a % 100, out days);
        if (aLength == 4 && scan.TakeWeekMark()) return TryWeek(ref scan, a, out days, out fineness);
        if (!scan.TakeDateMark(out var mark) || !scan.TakeDigits(8, out var b, out var bLength)) return false;
        if (aLength == 4 && bLength == 3 && mark == '-') return TryDayOfYear(a, b, out days);
        if (aLength == 4 && !scan.Peek(mark))
        {
            fineness = StampFineness.Month;
            return scan.AtEnd && bLength == 2 && TryDay(a, b, 1, out days);
        }
        if (scan.AtEnd && bLength == 4)
        {
            // 03/2024.
            fineness = StampFineness.Month;
            return aLength <= 2 && mark != '.' && TryDay(b, a, 1, out days);
        }
        if (!scan.Take(mark) || !scan.TakeDigits(8, out var c, out var cLength)) return false;
        if (aLength == 4) return bLength <= 2 && cLength <= 2 && TryDay(a, b, c, out days);
        if (cLength == 2) c += ShortYears;
        else if (cLength != 4) return false;
        if (aLength > 2 || bLength > 2) return false;
        return order switch
        {
            DateOrder.DayMonthYear => TryDay(c, b, a, out days),
            DateOrder.MonthDayYear => TryDay(c, a, b, out days),
            _ => false,
        };
    }

    private static bool TryDay(int year, int month, int day, out long days)
    {
        days = 0;
        if (year is < FirstYear or > LastYear || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month)) return false;
        days = DaysSince1970(year, month, day);
        return true;
    }

    internal static long DaysSince1970(int year, int month, int day) =>
        (new DateTime(year, month, day, 0, 0, 0, DateTimeKind.Utc) - DateTime.UnixEpoch).Days;

    private static bool TryTimeOfDay(ref Scan scan, out long ms)
    {
        ms = 0;
        if (!scan.TakeDigits(2, out var hour, out var hourLength)) return false;
        int minute, second = 0, fraction = 0;
        if (scan.TakeTimeMark(out var mark))
        {
            if (!scan.TakeDigits(2, out minute, out var length) || length != 2) return false;
            if (scan.Take(mark))
            {
                if (!scan.TakeDigits(2, out second, out length) || length != 2) return false;
                if ((scan.Take('.') || scan.Take(',')) && !scan.TakeFraction(out fraction)) return false;
            }
        }
        else
        {
            // 0930 without a colon, as in 20240301 0930.
            if (hourLength != 2 || !scan.TakeDigits(2, out minute, out var length) || length != 2) return false;
            if (!scan.AtEnd && scan.TakeDigits(2, out second, out length) && length != 2) return false;
        }
        if (!scan.TakeHalfOfDay(ref hour) || minute > 59 || second > 59) return false;
        // 24:00 is the end of the day named.
        if (hour > 24 || (hour == 24 && minute + second + fraction > 0)) return false;
        ms = (((hour * 60L) + minute) * MsPerMinute) + (second * 1000L) + fraction;
        return true;
    }

    private static bool TryOffset(ref Scan scan, out int? minutes)
    {
        minutes = null;
        if (scan.AtEnd) return true;
        scan.Take(' ');
        var isZulu = scan.Peek('Z') || scan.Peek('z');
        if (scan.TakeClockName(out var named))
        {
            minutes = named;
            if (isZulu || named != 0 || scan.AtEnd || scan.Peek('[')) return scan.TakeZoneInBrackets();
        }
        var sign = scan.Take('+') ? 1 : scan.Take('-') ? -1 : 0;
        if (sign == 0 || !scan.TakeDigits(2, out var hours, out var length) || (length != 2 && minutes is null) || hours > 18) return false;
        var extra = 0;
        if (!scan.AtEnd && !scan.Peek('['))
        {
            scan.Take(':');
            if (!scan.TakeDigits(2, out extra, out length) || length != 2 || extra > 59) return false;
        }
        minutes = sign * ((hours * 60) + extra);
        return scan.TakeZoneInBrackets();
    }
}
