namespace SolarEconomics.Notebook;

/// <summary>A finding for the page: the figure large, the words after it, tables, notes and cautions.</summary>
internal static class FindingHtml
{
    internal static string Of(Finding finding)
    {
        var html = new HtmlText();
        html.Open("div", "finding");
        if (finding.Figure.Length > 0) html.Element("p", "finding-figure", finding.Figure);
        if (finding.Words.Length > 0) html.Element("p", "finding-words", finding.Words);
        foreach (var table in finding.Tables) TableHtml.Write(html, table.Caption, table.Columns, table.Rows);
        WriteList(html, "finding-notes", finding.Notes);
        WriteList(html, "finding-cautions", finding.Cautions);
        return html.Close("div").ToString();
    }

    private static void WriteList(HtmlText html, string className, IReadOnlyList<string> items)
    {
        if (items.Count == 0) return;
        html.Open("ul", className);
        foreach (var item in items) html.Element("li", null, item);
        html.Close("ul");
    }
}
