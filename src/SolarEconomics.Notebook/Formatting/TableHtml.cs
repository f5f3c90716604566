namespace SolarEconomics.Notebook;

/// <summary>A table with its caption; columns of numbers are marked, so that a page can set them flush right.</summary>
internal static class TableHtml
{
    internal static void Write(HtmlText html, string caption, IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new FindingTable(caption, columns, [.. rows]);
        var isNumber = columns.Select((_, c) => table.IsOfAmounts(c)).ToArray();
        html.Open("table", "finding-table");
        if (caption.Length > 0) html.Element("caption", null, caption);
        html.Open("thead").Open("tr");
        foreach (var column in columns) html.Heading("col", column);
        html.Close("tr").Close("thead").Open("tbody");
        foreach (var row in table.Rows)
        {
            html.Open("tr");
            for (var c = 0; c < row.Count; c++) html.Element("td", c < isNumber.Length && isNumber[c] ? "number" : null, row[c]);
            html.Close("tr");
        }
        html.Close("tbody").Close("table");
    }
}
