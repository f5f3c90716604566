namespace SolarEconomics.Notebook;

/// <summary>A table with its caption; columns of numbers are marked, so that a page can set them flush right.</summary>
internal static class TableHtml
{
    internal static void Write(HtmlText html, string caption, IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var all = rows.ToList();
        var isNumber = Enumerable.Range(0, columns.Count).Select(c => all.Exists(r => c < r.Count) && all.TrueForAll(r => c >= r.Count || LooksLikeNumber(r[c]))).ToArray();
        html.Open("table", "finding-table");
        if (caption.Length > 0) html.Element("caption", null, caption);
        html.Open("thead").Open("tr");
        foreach (var column in columns) html.Heading("col", column);
        html.Close("tr").Close("thead").Open("tbody");
        foreach (var row in all)
        {
            html.Open("tr");
            for (var c = 0; c < row.Count; c++) html.Element("td", c < isNumber.Length && isNumber[c] ? "number" : null, row[c]);
            html.Close("tr");
        }
        html.Close("tbody").Close("table");
    }

    /// <summary>Text that holds a digit before any letter: an amount with its sign or currency, or a mark for a missing one.</summary>
    private static bool LooksLikeNumber(string text)
    {
        if (text.Length == 0 || text is "–" or "—") return true;
        foreach (var c in text)
        {
            if (char.IsDigit(c)) return true;
            if (char.IsLetter(c)) return false;
        }
        return false;
    }
}
