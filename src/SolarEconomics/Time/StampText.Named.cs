namespace SolarEconomics;

internal static partial class StampText
{
    private static readonly (string Name, int Minutes)[] ClockNames =
        [("Z", 0), ("UTC", 0), ("GMT", 0), ("CET", 60), ("CEST", 120), ("MEZ", 60), ("MESZ", 120), ("EET", 120), ("EEST", 180), ("AEST", 600), ("AEDT", 660), ("NZST", 720), ("NZDT", 780)];

    private static readonly string[] Fillers = ["de", "del", "of", "den", "der", "le", "er", "st", "nd", "rd", "th"];

    /// <summary>Reads dates with the name of the month: 1 March 2024, 1. März 2024, March 1, 2024, 01MAR2024, 1-Mar-24, 1 de enero de 2024, Mar 2024.</summary>
    private static bool TryNamedParts(ref Scan scan, out long days, out StampFineness fineness)
    {
        days = 0;
        fineness = StampFineness.Day;
        var (month, monthAt, count) = (0, -1, 0);
        Span<int> numbers = stackalloc int[2];
        Span<int> lengths = stackalloc int[2];
        while (count + (month > 0 ? 1 : 0) < 3)
        {
            if (scan.TakeDigits(4, out var number, out var length))
            {
                if (count == 2) return false;
                (numbers[count], lengths[count]) = (number, length);
                count++;
            }
            else if (scan.TakeWord(out var word))
            {
                if (month == 0 && MonthNames.TryFind(word, out month)) monthAt = count;
                else if ((count == 0 && month == 0) || !IsFiller(word)) return false;
            }
            else
            {
                return false;
            }
            if (month > 0 && count == 1 && scan.AtEnd)
            {
                fineness = StampFineness.Month;
                return lengths[0] == 4 && TryDay(numbers[0], month, 1, out days);
            }
            if (month > 0 && count == 2) break;
            scan.TakeAnyOf(" -/.,");
        }
        if (month == 0 || count < 2) return false;
        // The year stands last, or first where it has four digits: 2024 March 1.
        var yearFirst = monthAt == 1 && lengths[0] == 4;
        var (year, yearLength, day, dayLength) = yearFirst ? (numbers[0], lengths[0], numbers[1], lengths[1]) : (numbers[1], lengths[1], numbers[0], lengths[0]);
        if (dayLength > 2 || yearLength is not (2 or 4)) return false;
        return TryDay(yearLength == 2 ? year + ShortYears : year, month, day, out days);
    }

    private static bool IsFiller(ReadOnlySpan<char> word)
    {
        foreach (var filler in Fillers)
            if (word.Equals(filler, StringComparison.OrdinalIgnoreCase)) return true;
        return false;
    }

    /// <summary>A week of ISO 8601, 2024-W05, or a day of one, 2024-W05-3. Weeks begin on Monday, and the first holds 4 January. Source: readings-isoweek.</summary>
    private static bool TryWeek(ref Scan scan, int year, out long days, out StampFineness fineness)
    {
        (days, fineness) = (0, StampFineness.Week);
        if (year is < FirstYear or > LastYear || !scan.TakeDigits(2, out var week, out var length) || length != 2) return false;
        if (week < 1 || week > System.Globalization.ISOWeek.GetWeeksInYear(year)) return false;
        var day = 1;
        if (!scan.AtEnd)
        {
            scan.Take('-');
            if (!scan.TakeDigits(1, out day, out _) || day is < 1 or > 7) return false;
            fineness = StampFineness.Day;
        }
        var first = System.Globalization.ISOWeek.ToDateTime(year, week, DayOfWeek.Monday);
        days = DaysSince1970(first.Year, first.Month, first.Day) + day - 1;
        return true;
    }

    /// <summary>A day counted from the beginning of its year, 2024-061.</summary>
    private static bool TryDayOfYear(int year, int day, out long days)
    {
        days = 0;
        if (year is < FirstYear or > LastYear || day < 1 || day > (DateTime.IsLeapYear(year) ? 366 : 365)) return false;
        days = DaysSince1970(year, 1, 1) + day - 1;
        return true;
    }
}
