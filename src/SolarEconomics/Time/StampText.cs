namespace SolarEconomics;

/// <summary>Reads times from text: dates in three orders, with month names, compact, with seconds, fractions, am and pm, offsets.</summary>
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
        if (!TryDate(ref scan, order, out var days, out var fineness)) return false;
        if (scan.AtEnd)
        {
            stamp = new Stamp(days * MsPerDay, null, fineness);
            return true;
        }
        if (fineness != StampFineness.Day || !scan.TakeDateTimeGap()) return false;
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

    private static bool TryDate(ref Scan scan, DateOrder order, out long days, out StampFineness fineness)
    {
        days = 0;
        fineness = StampFineness.Day;
        if (!scan.TakeNumberOrMonth(out var a, out var aLength)) return false;
        if (aLength == 8) return TryDay(a / 10_000, a / 100 % 100, a % 100, out days);
        if (aLength is 12 or 14) return false;
        if (!scan.TakeDateMark(out var mark)) return false;
        if (!scan.TakeNumberOrMonth(out var b, out var bLength)) return false;
        if (aLength == 4 && !scan.Peek(mark))
        {
            fineness = StampFineness.Month;
            return scan.AtEnd && bLength is 2 or Scan.MonthName && TryDay(a, b, 1, out days);
        }
        if (scan.AtEnd && bLength == 4)
        {
            // Mar 2024, 03/2024.
            fineness = StampFineness.Month;
            return (aLength == Scan.MonthName || (aLength <= 2 && mark != '.')) && TryDay(b, a, 1, out days);
        }
        if (!scan.Take(mark) || !scan.TakeNumberOrMonth(out var c, out var cLength)) return false;
        if (aLength == 4) return bLength <= 2 && cLength <= 2 && TryDay(a, b, c, out days);
        if (cLength == 2) c += ShortYears;
        else if (cLength != 4) return false;
        if (aLength == Scan.MonthName) return bLength <= 2 && TryDay(c, a, b, out days);
        if (bLength == Scan.MonthName) return aLength <= 2 && TryDay(c, b, a, out days);
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
        if (scan.Take(':'))
        {
            if (!scan.TakeDigits(2, out minute, out var length) || length != 2) return false;
            if (scan.Take(':'))
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
        if (scan.Take('Z') || scan.Take('z'))
        {
            minutes = 0;
            return true;
        }
        var sign = scan.Take('+') ? 1 : scan.Take('-') ? -1 : 0;
        if (sign == 0 || !scan.TakeDigits(2, out var hours, out var length) || length != 2 || hours > 18) return false;
        var extra = 0;
        if (!scan.AtEnd)
        {
            scan.Take(':');
            if (!scan.TakeDigits(2, out extra, out length) || length != 2 || extra > 59) return false;
        }
        minutes = sign * ((hours * 60) + extra);
        return true;
    }

    private ref struct Scan(ReadOnlySpan<char> text)
    {
        /// <summary>What <see cref="TakeNumberOrMonth"/> gives as the length of a month's name.</summary>
        internal const int MonthName = 99;

        private static readonly string[] Months =
            ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

        private static readonly string[] LongMonths =
            ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

        private readonly ReadOnlySpan<char> _text = text;
        private int _at;

        internal readonly bool AtEnd => _at >= _text.Length;

        internal readonly bool Peek(char c) => _at < _text.Length && _text[_at] == c;

        internal bool Take(char c)
        {
            if (!Peek(c)) return false;
            _at++;
            return true;
        }

        internal bool TakeDigits(int most, out int value, out int length)
        {
            value = 0;
            length = 0;
            while (length < most && _at < _text.Length && char.IsAsciiDigit(_text[_at]))
            {
                value = (value * 10) + (_text[_at++] - '0');
                length++;
            }
            return length > 0;
        }

        internal bool TakeFraction(out int milliseconds)
        {
            milliseconds = 0;
            var length = 0;
            while (_at < _text.Length && char.IsAsciiDigit(_text[_at]))
            {
                if (length < 3) milliseconds = (milliseconds * 10) + (_text[_at] - '0');
                length++;
                _at++;
            }
            for (var i = length; i < 3; i++) milliseconds *= 10;
            return length is > 0 and <= 9;
        }

        internal bool TakeNumberOrMonth(out int value, out int length)
        {
            var start = _at;
            while (_at < _text.Length && char.IsAsciiLetter(_text[_at])) _at++;
            if (_at == start) return TakeDigits(8, out value, out length);
            var word = _text[start.._at].ToString();
            value = Math.Max(
                Array.FindIndex(Months, m => string.Equals(m, word, StringComparison.OrdinalIgnoreCase)),
                Array.FindIndex(LongMonths, m => string.Equals(m, word, StringComparison.OrdinalIgnoreCase))) + 1;
            length = MonthName;
            return value > 0;
        }

        internal bool TakeDateMark(out char mark)
        {
            mark = AtEnd ? '\0' : _text[_at];
            if (mark is not ('-' or '/' or '.' or ' ')) return false;
            _at++;
            return true;
        }

        internal bool TakeDateTimeGap()
        {
            if (Take('T') || Take('t')) return true;
            Take(',');
            var any = false;
            while (Take(' ')) any = true;
            return any;
        }

        internal bool TakeHalfOfDay(ref int hour)
        {
            var saved = _at;
            while (Take(' ')) { }
            var rest = _text[_at..];
            var am = rest.StartsWith("am", StringComparison.OrdinalIgnoreCase);
            var pm = rest.StartsWith("pm", StringComparison.OrdinalIgnoreCase);
            if (!am && !pm)
            {
                _at = saved;
                return true;
            }
            _at += 2;
            if (hour is < 1 or > 12) return false;
            hour = (hour % 12) + (pm ? 12 : 0);
            return true;
        }
    }
}
