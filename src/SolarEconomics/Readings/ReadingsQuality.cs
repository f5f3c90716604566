using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>How far the readings of a site can be trusted: counts per channel, where values are missing, and what was done about what was found.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed class ReadingsQuality : IFinding
{
    private const int RowsShown = 20;

    internal ReadingsQuality(Readings readings)
    {
        Channels = [.. readings.Channels.Select(ChannelQuality.Of)];
        Counters = readings.Counters;
        Problems = readings.Problems;
        Zone = readings.Zone;
    }

    /// <summary>The counts, one per channel, in the order of the channels.</summary>
    public IReadOnlyList<ChannelQuality> Channels { get; }

    /// <summary>The lifetime counters.</summary>
    public IReadOnlyList<Counter> Counters { get; }

    /// <summary>What was found on the way, and what was done about it.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>Clock in which times are told.</summary>
    public DateTimeZone Zone { get; }

    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var readings = Channels.Sum(c => (long)c.Readings);
        var missing = Channels.Sum(c => (long)c.Missing);
        var share = readings + missing == 0 ? 1 : readings / (double)(readings + missing);
        var figure = Channels.Count > 0 ? share.ToString("0.0 %", culture) + " of intervals read" : Say(Counters.Count, "counter", culture) + " read";
        var words = $"{Say(readings, "reading", culture)} in {Say(Channels.Count, "channel", culture)} and {Say(Counters.Count, "counter", culture)}; "
            + $"{Say(missing, "interval", culture)} missing. {Lost(culture)}";
        return new Finding(figure, words)
        {
            Notes = ["A missing interval is never filled and never counted as 0.", "Times are those of " + Zone.Id + "."],
            Tables = [.. Tables(culture)],
        };
    }

    private string Lost(CultureInfo culture)
    {
        var lost = Problems.Count(p => p.Severity == Severity.Lost);
        var doubtful = Problems.Count(p => p.Severity == Severity.Doubtful);
        return lost + doubtful == 0 ? "Nothing was lost and nothing is doubtful."
            : $"{Say(lost, "finding", culture)} of values lost and {Say(doubtful, "finding", culture)} of doubtful ones are listed below.";
    }

    private IEnumerable<FindingTable> Tables(CultureInfo culture)
    {
        if (Channels.Count > 0)
            yield return new FindingTable("Channels", ["channel", "flow", "from", "until", "kWh", "readings", "missing", "estimated", "repeated", "negative", "resets"],
                [.. Channels.Select(c => Row(c, culture))]);
        if (Counters.Count > 0)
            yield return new FindingTable("Counters", ["device", "first reading", "last reading", "shows (kWh)", "counted here (kWh)", "resets"],
                [.. Counters.Select(c => (IReadOnlyList<string>)[c.Device, Date(c.Readings[0].Date), Date(c.Readings[^1].Date),
                    c.LastKwh.ToString("#,0.0", culture), c.CountedKwh.ToString("#,0.0", culture), c.Resets.ToString(culture)])]);
        var events = Channels.SelectMany(c => c.Events.Where(e => e.What != Quality.Missing).Select(e => (c.Channel.Name, Event: e))).ToList();
        if (events.Count > 0)
            yield return new FindingTable(events.Count > RowsShown ? $"The {RowsShown.ToString(culture)} largest of {events.Count.ToString("#,0", culture)} stretches with a mark" : "Stretches with a mark, the largest first",
                ["channel", "what", "from", "until", "intervals", "kWh", "done"],
                [.. events.OrderByDescending(e => Math.Abs(e.Event.Kwh)).Take(RowsShown).Select(e => (IReadOnlyList<string>)[e.Name, e.Event.What.ToString().ToLowerInvariant(), Time(e.Event.Start), Time(e.Event.End),
                    e.Event.Intervals.ToString("#,0", culture), e.Event.Kwh.ToString("#,0.0", culture), e.Event.Done])]);
        var gaps = Channels.SelectMany(c => c.Gaps.Select(g => (c.Channel.Name, Gap: g))).OrderByDescending(g => g.Gap.Length).ToList();
        if (gaps.Count > 0)
            yield return new FindingTable(gaps.Count > RowsShown ? $"The {RowsShown.ToString(culture)} longest gaps of {gaps.Count.ToString("#,0", culture)}" : "Gaps, the longest first",
                ["channel", "from", "until", "hours", "intervals"],
                [.. gaps.Take(RowsShown).Select(g => (IReadOnlyList<string>)[g.Name, Time(g.Gap.Start), Time(g.Gap.End), g.Gap.Length.TotalHours.ToString("#,0.##", culture), g.Gap.Intervals.ToString("#,0", culture)])]);
        if (Problems.Count > 0)
            yield return new FindingTable(Problems.Count > RowsShown ? $"The first {RowsShown.ToString(culture)} of {Problems.Count.ToString("#,0", culture)} findings" : "Findings",
                ["where", "found", "expected, and what was done", "weight"],
                [.. Problems.OrderByDescending(p => p.Severity).Take(RowsShown).Select(p => (IReadOnlyList<string>)[Where(p, culture), p.Found, p.Expected, p.Severity.ToString().ToLowerInvariant()])]);
    }

    private IReadOnlyList<string> Row(ChannelQuality quality, CultureInfo culture) =>
    [
        quality.Channel.Name, HeaderWords.Name(quality.Channel.Flow),
        quality.Channel.Start is { } start ? Time(start) : "", quality.Channel.End is { } end ? Time(end) : "",
        quality.Channel.IsEnergy ? quality.TotalKwh.ToString("#,0.0", culture) : "no energy", quality.Readings.ToString("#,0", culture), quality.Missing.ToString("#,0", culture),
        quality.Estimated.ToString("#,0", culture), quality.Repeated.ToString("#,0", culture), quality.Negative.ToString("#,0", culture), quality.Resets.ToString("#,0", culture),
    ];

    private static string Where(Problem problem, CultureInfo culture) =>
        problem.Line > 0 ? $"{problem.File}, line {problem.Line.ToString(culture)}" : problem.File;

    private string Time(Instant instant) => instant.InZone(Zone).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Date(LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);

    private static string Say(long number, string noun, CultureInfo culture) =>
        number.ToString("#,0", culture) + " " + noun + (number == 1 ? "" : "s");
}
