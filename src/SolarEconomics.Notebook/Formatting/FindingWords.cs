using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>A finding as plain text: for terminals, for diffs, and for clients that show no HTML.</summary>
internal static class FindingWords
{
    internal static string Of(Finding finding)
    {
        var text = new StringBuilder();
        if (finding.Figure.Length > 0) text.Append(finding.Figure).Append('\n');
        if (finding.Words.Length > 0) text.Append(finding.Words).Append('\n');
        foreach (var table in finding.Tables) AppendTable(text, table);
        foreach (var note in finding.Notes) text.Append("- ").Append(note).Append('\n');
        foreach (var caution in finding.Cautions) text.Append("! ").Append(caution).Append('\n');
        return text.ToString().TrimEnd('\n');
    }

    internal static void AppendTable(StringBuilder text, FindingTable table)
    {
        var widths = table.Columns.Select((c, i) => table.Rows.Select(r => i < r.Count ? r[i].Length : 0).Append(c.Length).Max()).ToArray();
        text.Append('\n').Append(table.Caption).Append('\n');
        AppendRow(text, table.Columns, widths);
        foreach (var row in table.Rows) AppendRow(text, row, widths);
        text.Append('\n');
    }

    private static void AppendRow(StringBuilder text, IReadOnlyList<string> cells, int[] widths)
    {
        for (var i = 0; i < cells.Count; i++)
            text.Append(i == 0 ? "" : "  ").Append(i < widths.Length && i < cells.Count - 1 ? cells[i].PadRight(widths[i]) : cells[i]);
        text.Append('\n');
    }
}
