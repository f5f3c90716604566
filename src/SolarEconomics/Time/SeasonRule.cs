using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>One yearly clock change: a day by rule, and a time of day on the wall clock before the change.</summary>
internal readonly record struct SeasonRule(int Month, int Kind, int DayOfMonth, IsoDayOfWeek DayOfWeek, LocalTime Time)
{
    private const int LastInMonth = 7;

    /// <summary>Reads the packed form of eight hexadecimal digits; <see langword="null"/> where it is none.</summary>
    internal static SeasonRule? Of(string? packed)
    {
        if (!uint.TryParse(packed?.Trim(), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var bits)) return null;
        var month = (int)(bits >> 28);
        var kind = (int)((bits >> 25) & 7);
        var dayOfMonth = (int)((bits >> 20) & 31);
        var dayOfWeek = (int)((bits >> 17) & 7);
        var hour = (int)((bits >> 12) & 31);
        var second = (int)(bits & 0xFFF);
        if (month is < 1 or > 12 || hour > 23 || second > 3599) return null;
        if (kind == 0 ? dayOfMonth is < 1 : dayOfWeek == 0) return null;
        return new SeasonRule(month, kind, dayOfMonth, (IsoDayOfWeek)dayOfWeek, new LocalTime(hour, second / 60, second % 60));
    }

    /// <summary>Date and wall-clock time of the change in a year.</summary>
    internal LocalDateTime In(int year)
    {
        var first = new LocalDate(year, Month, 1);
        var last = first.PlusMonths(1).PlusDays(-1);
        var day = Kind switch
        {
            0 => new LocalDate(year, Month, Math.Min(DayOfMonth, last.Day)),
            1 => OnOrAfter(new LocalDate(year, Month, Math.Clamp(DayOfMonth, 1, last.Day))),
            LastInMonth => OnOrAfter(last.PlusDays(-6)),
            _ => OnOrAfter(first).PlusWeeks(Kind - 2),
        };
        return day.At(Time);
    }

    private LocalDate OnOrAfter(LocalDate date) => date.DayOfWeek == DayOfWeek ? date : date.Next(DayOfWeek);
}
