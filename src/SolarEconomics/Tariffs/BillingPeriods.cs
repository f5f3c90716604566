using NodaTime;

namespace SolarEconomics;

/// <summary>Ways to cut a span of days into billing periods.</summary>
public static class BillingPeriods
{
    /// <summary>Calendar months that a span touches, whole.</summary>
    /// <param name="days">The span.</param>
    public static IReadOnlyList<DateSpan> Months(DateSpan days) => Calendar(days, 1);

    /// <summary>Calendar quarters that a span touches, whole.</summary>
    /// <param name="days">The span.</param>
    public static IReadOnlyList<DateSpan> Quarters(DateSpan days) => Calendar(days, 3);

    /// <summary>Periods from own dates, each the first day of a period; the last date ends the last.</summary>
    /// <param name="dates">At least two days, ascending.</param>
    /// <exception cref="ArgumentException">Fewer than two days, or not ascending.</exception>
    public static IReadOnlyList<DateSpan> Between(params IReadOnlyList<LocalDate> dates)
    {
        ArgumentNullException.ThrowIfNull(dates);
        if (dates.Count < 2 || dates.Zip(dates.Skip(1)).Any(pair => pair.Second <= pair.First)) throw Throw.BillingDates(dates);
        return [.. dates.Zip(dates.Skip(1), (from, until) => new DateSpan(from, until))];
    }

    private static List<DateSpan> Calendar(DateSpan days, int months)
    {
        var periods = new List<DateSpan>();
        if (days.Days == 0) return periods;
        for (var start = new LocalDate(days.Start.Year, ((days.Start.Month - 1) / months * months) + 1, 1); start < days.End; start = start.PlusMonths(months))
            periods.Add(new DateSpan(start, start.PlusMonths(months)));
        return periods;
    }
}
