using NodaTime;

namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>The part of a year between two days.</summary>
    /// <param name="start">First day.</param>
    /// <param name="end">Day that no longer counts; not before <paramref name="start"/>.</param>
    /// <param name="count">How days become a part of a year.</param>
    /// <returns>Years, 0 or more.</returns>
    /// <exception cref="ArgumentException"><paramref name="end"/> is before <paramref name="start"/>.</exception>
    /// <remarks>Source: money-4.</remarks>
    public static double YearFraction(LocalDate start, LocalDate end, DayCount count = DayCount.Actual365)
    {
        if (end < start) throw Throw.OutOfOrder(new DatedAmount(start, 0), new DatedAmount(end, 0));
        return count switch
        {
            DayCount.Actual365 => Days(start, end) / 365.0,
            DayCount.Actual360 => Days(start, end) / 360.0,
            DayCount.ActualActual => ActualActual(start, end),
            DayCount.Thirty360European => Thirty360(start, end, Math.Min(start.Day, 30), Math.Min(end.Day, 30)),
            DayCount.Thirty360Us => ThirtyUs(start, end),
            _ => throw new ArgumentOutOfRangeException(nameof(count), count, "Expected a named day count."),
        };
    }

    private static int Days(LocalDate start, LocalDate end) => Period.DaysBetween(start, end);

    private static double ActualActual(LocalDate start, LocalDate end)
    {
        var years = 0.0;
        for (var from = start; from < end;)
        {
            var nextYear = new LocalDate(from.Year + 1, 1, 1);
            var to = LocalDate.Min(nextYear, end);
            years += Days(from, to) / (double)from.Calendar.GetDaysInYear(from.Year);
            from = to;
        }
        return years;
    }

    private static double Thirty360(LocalDate start, LocalDate end, int startDay, int endDay) =>
        (360 * (end.Year - start.Year) + 30 * (end.Month - start.Month) + (endDay - startDay)) / 360.0;

    private static double ThirtyUs(LocalDate start, LocalDate end)
    {
        var startsAtEndOfFebruary = IsEndOfFebruary(start);
        var endDay = startsAtEndOfFebruary && IsEndOfFebruary(end) ? 30 : end.Day;
        var startDay = startsAtEndOfFebruary ? 30 : Math.Min(start.Day, 30);
        if (endDay == 31 && startDay == 30) endDay = 30;
        return Thirty360(start, end, startDay, endDay);
    }

    private static bool IsEndOfFebruary(LocalDate day) => day.Month == 2 && day.PlusDays(1).Month == 3;
}
