using System.Globalization;
using System.Text;

namespace SolarEconomics.Workbench;

/// <summary>Writes a finding as plain text for a terminal: the figure with its words, tables, notes and cautions.</summary>
internal static class FindingText
{
    internal static string Write(Finding finding)
    {
        var text = new StringBuilder().Append(finding.Figure).Append(' ').Append(finding.Words).Append('\n');
        foreach (var table in finding.Tables) Table(text, table);
        if (finding.Notes.Count > 0) text.Append('\n');
        foreach (var note in finding.Notes) text.Append(note).Append('\n');
        if (finding.Cautions.Count > 0) text.Append('\n');
        foreach (var caution in finding.Cautions) text.Append(caution).Append('\n');
        return text.ToString().TrimEnd();
    }

    private static void Table(StringBuilder text, FindingTable table)
    {
        text.Append('\n').Append(table.Caption).Append('\n');
        var rows = table.Rows.Prepend(table.Columns).ToList();
        var widths = Enumerable.Range(0, table.Columns.Count).Select(c => rows.Max(r => r[c].Length)).ToArray();
        // A column of numbers stands flush right, so that digits of one weight stand below each other.
        var isNumber = Enumerable.Range(0, table.Columns.Count).Select(c => table.Rows.All(r => r[c].Any(char.IsAsciiDigit) && r[c].All(Numeric))).ToArray();
        foreach (var row in rows)
        {
            var line = new StringBuilder("  ");
            for (var c = 0; c < row.Count; c++)
                line.Append(isNumber[c] ? row[c].PadLeft(widths[c]) : row[c].PadRight(widths[c])).Append("  ");
            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }

    private static bool Numeric(char c) => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '−' or '’' or '\'' || char.GetUnicodeCategory(c) == UnicodeCategory.SpaceSeparator;
}
