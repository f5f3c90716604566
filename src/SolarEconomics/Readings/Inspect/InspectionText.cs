using System.Globalization;
using System.Text;
using NodaTime;

namespace SolarEconomics;

/// <summary>Writes an inspection for people, as plain text and as tables.</summary>
internal static class InspectionText
{
    internal static string Write(Inspection inspection, CultureInfo culture)
    {
        var text = new StringBuilder();
        foreach (var file in inspection.Files)
        {
            if (text.Length > 0) text.Append('\n');
            text.Append(file.File).Append(": ").Append(file.ExitCode == 2 ? "not readable" : file.Format).Append('\n');
            if (file.Clock is { } clock)
            {
                AppendTable(text, ChannelTable(file, culture));
                text.Append("  ").Append(Count(file.LocalDays, "local day", culture)).Append(" by ").Append(clock.Id);
                if (file.ShortDays.Count > 0) text.Append("; shorter than 24 hours: ").Append(Days(file.ShortDays, culture));
                if (file.LongDays.Count > 0) text.Append("; longer than 24 hours: ").Append(Days(file.LongDays, culture));
                text.Append('\n');
                foreach (var column in file.Columns) text.Append("  ").Append(column.Reason).Append('\n');
            }
            foreach (var problem in file.Problems)
                text.Append("  ").Append(Word(problem.Severity)).Append(": ").Append(problem).Append('\n');
        }
        return text.ToString();
    }

    internal static FindingTable ChannelTable(InspectedFile file, CultureInfo culture) => new(
        $"Channels of {file.File}",
        ["channel", "flow", "unit", "readings", "from", "until", "kWh", "missing", "estimated", "repeated", "negative", "resets"],
        [.. file.Channels.Select(c => Row(c, file.Clock!, culture))]);

    internal static FindingTable ProblemTable(InspectedFile file, CultureInfo culture) => new(
        $"Findings in {file.File}",
        ["line", "column", "raw", "found", "expected", "weight"],
        [.. file.Problems.Select(p => (IReadOnlyList<string>)[p.Line.ToString(culture), p.Column.ToString(culture), p.Raw, p.Found, p.Expected, Word(p.Severity)])]);

    private static IReadOnlyList<string> Row(InspectedChannel channel, DateTimeZone clock, CultureInfo culture) =>
    [
        channel.Name, HeaderWords.Name(channel.Flow), channel.Unit, channel.Readings.ToString("#,0", culture), Time(channel.Start, clock), Time(channel.End, clock),
        channel.TotalKwh is { } kwh ? kwh.ToString("#,0.000", culture) : "no energy",
        channel.Missing.ToString("#,0", culture), channel.Estimated.ToString("#,0", culture), channel.Repeated.ToString("#,0", culture),
        channel.Negative.ToString("#,0", culture), channel.Resets.ToString("#,0", culture),
    ];

    private static void AppendTable(StringBuilder text, FindingTable table)
    {
        var rows = table.Rows.Prepend(table.Columns).ToList();
        var widths = Enumerable.Range(0, table.Columns.Count).Select(c => rows.Max(r => r[c].Length)).ToArray();
        foreach (var row in rows)
        {
            var line = new StringBuilder("  ");
            for (var c = 0; c < row.Count; c++) line.Append(row[c].PadRight(widths[c] + 2));
            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }

    private static string Time(Instant? instant, DateTimeZone clock) =>
        instant is { } value ? value.InZone(clock).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture) : "";

    private static string Days(IReadOnlyList<LocalDate> days, CultureInfo culture)
    {
        const int Shown = 6;
        var some = string.Join(", ", days.Take(Shown).Select(NodaTime.Text.LocalDatePattern.Iso.Format));
        return days.Count <= Shown ? some : $"{some} and {(days.Count - Shown).ToString(culture)} more";
    }

    private static string Count(int number, string noun, CultureInfo culture) => $"{number.ToString("#,0", culture)} {noun}{(number == 1 ? "" : "s")}";

    private static string Word(Severity severity) => severity.ToString().ToLowerInvariant();
}
