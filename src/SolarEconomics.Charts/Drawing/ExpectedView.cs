using System.Globalization;
using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>The part of expected against measured that a picture shows.</summary>
internal sealed class ExpectedView
{
    internal const string LineName = "expected";
    private const int DaysAround = 21;
    private const int DaysWithoutEvent = 60;
    private readonly IReadOnlyList<LostEnergy> _events;

    internal ExpectedView(ExpectedAgainstMeasured result, DateSpan? days)
    {
        var wanted = days ?? Around(result);
        Days = [.. result.Days.Where(d => wanted.Contains(d.Date))];
        Span = Days.Count == 0 ? wanted : new DateSpan(Days[0].Date, Days[^1].Date.PlusDays(1));
        _events = [.. result.Events.Where(e => e.Shortfall.Days.Overlap(Span).Days > 0)];
        var lost = _events.SelectMany(e => e.Days).ToDictionary(d => d.Date, d => d.Kwh);
        LostKwh = [.. Days.Select(d => lost.TryGetValue(d.Date, out var kwh) ? Math.Max(0, kwh) : (double?)null)];
        // Room above the tallest day for the names of events.
        Top = Math.Max(1, Days.Count == 0 ? 0 : Days.Max(Height)) * 1.22;
    }

    internal IReadOnlyList<DayOfOutput> Days { get; }

    internal DateSpan Span { get; }

    /// <summary>What an event lost on each day; <see langword="null"/> on days without.</summary>
    internal IReadOnlyList<double?> LostKwh { get; }

    /// <summary>Whole weeks between two dates on the axis, seven or eight of them.</summary>
    internal int DaysBetweenTicks => 7 * Math.Max(1, (int)Math.Round(Span.Days / 7.0 / 7.5));

    /// <summary>Upper end of the energy axis. Unit: kWh.</summary>
    internal double Top { get; }

    /// <summary>The name of the line, and of the event that lost most in view: two labels at most, so that none covers another.</summary>
    internal IEnumerable<(string Text, LocalDate At, double Height, string Side)> Labels(CultureInfo culture)
    {
        if (_events.MaxBy(e => e.Shortfall.LostKwh) is not { } worst)
        {
            yield return (LineName, Days[0].Date, Days.Take(DaysAround).Max(Height), "right above");
            yield break;
        }

        var days = worst.Shortfall.Days.Overlap(Span);
        var isLate = Period.DaysBetween(Span.Start, days.Start) > Span.Days / 2;
        var text = $"{Name(worst.Shortfall.Kind)}: {PeopleNumber.Kwh(worst.Shortfall.LostKwh, culture)} lost";
        yield return (text, isLate ? days.End.PlusDays(-1) : days.Start, Top / 1.22 * 1.04, isLate ? "left above" : "right above");
        // The line is named at the end that the event leaves free.
        var free = isLate ? Days.Take(DaysAround / 2).ToList() : Days.TakeLast(DaysAround / 2).ToList();
        yield return (LineName, isLate ? Days[0].Date : Days[^1].Date, free.Max(Height), isLate ? "right above" : "left above");
    }

    private static double Height(DayOfOutput day) => Math.Max(day.ExpectedKwh, day.MeasuredKwh ?? 0);

    private static string Name(ShortfallKind kind) => kind switch
    {
        ShortfallKind.Outage => "outage",
        ShortfallKind.PartialString => "part of the strings",
        ShortfallKind.Dirt => "dirt",
        ShortfallKind.HeatDerating => "heat",
        ShortfallKind.Clipping => "at its limit",
        ShortfallKind.Curtailment => "held back",
        _ => "unexplained",
    };

    private static DateSpan Around(ExpectedAgainstMeasured result)
    {
        if (result.Events.MaxBy(e => e.Shortfall.LostKwh) is { } worst)
        {
            return new DateSpan(worst.Shortfall.Days.Start.PlusDays(-DaysAround), worst.Shortfall.Days.End.PlusDays(DaysAround));
        }

        var end = result.Days.Count == 0 ? default : result.Days[^1].Date.PlusDays(1);
        return new DateSpan(end.PlusDays(-DaysWithoutEvent), end);
    }
}
