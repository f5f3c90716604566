using NodaTime;

namespace SolarEconomics;

/// <summary>A named part of the year, half-open, which may run across the year's end.</summary>
/// <param name="Name">The name that rates refer to, for example <c>winter</c>.</param>
/// <param name="From">First day of the season.</param>
/// <param name="Until">First day that no longer belongs to it. Equal to <paramref name="From"/>: the whole year.</param>
public sealed record TariffSeason(string Name, AnnualDate From, AnnualDate Until)
{
    /// <summary>Whether a day of any year lies in the season.</summary>
    /// <param name="day">Any calendar day. 29 February is judged by its own place in the year.</param>
    public bool Contains(LocalDate day)
    {
        var at = (day.Month * 32) + day.Day;
        var from = (From.Month * 32) + From.Day;
        var until = (Until.Month * 32) + Until.Day;
        return from < until ? at >= from && at < until : at >= from || at < until;
    }

    /// <summary>Days of the season's run in which a day lies.</summary>
    internal int DaysAround(LocalDate day)
    {
        if (From == Until) return CalendarSystem.Iso.GetDaysInYear(day.Year);
        var start = From.InYear(day.Year) <= day ? From.InYear(day.Year) : From.InYear(day.Year - 1);
        var end = Until.InYear(start.Year) > start ? Until.InYear(start.Year) : Until.InYear(start.Year + 1);
        return Period.DaysBetween(start, end);
    }
}
