namespace SolarEconomics;

/// <summary>Where the parts of a row's time stand in columns of their own: year, month, day, and the hour or the number of the interval.</summary>
internal sealed record TimeParts
{
    /// <summary>Field of the year; −1 where the date stands in one field.</summary>
    internal int Year { get; init; } = -1;

    internal int Month { get; init; } = -1;

    internal int Day { get; init; } = -1;

    /// <summary>Field of the hour or of the interval's number; −1 where there is none.</summary>
    internal int Number { get; init; } = -1;

    /// <summary>Number of the first interval of a day: 0 or 1.</summary>
    internal int First { get; init; }

    /// <summary>Length of an interval.</summary>
    internal int StepMinutes { get; init; } = 60;

    /// <summary>Whether numbers count the time that passed since the day began: 46, 48 or 50 half hours. Hours from 0 on are those of the wall clock.</summary>
    internal bool Passed { get; init; }

    /// <summary>Field of the minute; −1 where there is none.</summary>
    internal int Minute { get; init; } = -1;

    internal StampFineness Fineness => Number >= 0 ? StampFineness.Time : Year < 0 || Day >= 0 ? StampFineness.Day : Month >= 0 ? StampFineness.Month : StampFineness.Year;

    internal IEnumerable<int> Columns => new[] { Year, Month, Day, Number, Minute }.Where(i => i >= 0);

    /// <summary>The day of a row that states it in parts.</summary>
    internal bool TryDay(ReadOnlySpan<string> fields, out Stamp stamp)
    {
        stamp = default;
        if (!TryWhole(fields, Year, out var year)) return false;
        var (month, day) = (1, 1);
        if (Month >= 0 && !TryWhole(fields, Month, out month) && !(Month < fields.Length && MonthNames.TryFind(fields[Month].AsSpan().Trim(), out month))) return false;
        if (Day >= 0 && !TryWhole(fields, Day, out day)) return false;
        if (year is < 1900 or > 2199 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month)) return false;
        stamp = new Stamp(StampText.DaysSince1970(year, month, day) * 86_400_000L, null, Day >= 0 ? StampFineness.Day : Month >= 0 ? StampFineness.Month : StampFineness.Year);
        return true;
    }

    /// <summary>Time since the beginning of the day. Unit: milliseconds.</summary>
    internal bool TryTime(ReadOnlySpan<string> fields, out long ms)
    {
        ms = 0;
        var minute = 0;
        if (!TryWhole(fields, Number, out var number) || (Minute >= 0 && (!TryWhole(fields, Minute, out minute) || minute > 59))) return false;
        ms = (((number - First) * (long)StepMinutes) + minute) * 60_000;
        return number >= First && ms < 25 * 3_600_000L;
    }

    internal static bool TryWhole(ReadOnlySpan<string> fields, int index, out int number)
    {
        number = 0;
        if (index < 0 || index >= fields.Length || !NumberText.Plain.TryRead(fields[index], out var value) || value != Math.Floor(value) || value is < 0 or > 9999) return false;
        number = (int)value;
        return true;
    }
}
