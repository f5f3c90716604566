using System.Net;
using System.Text;

namespace SolarEconomics.Charts;

/// <summary>Writes one chart as a page that works with no network. The one place of this layer that writes tags: all text is escaped here.</summary>
internal static class ChartPage
{
    // The page may run what stands in it and may ask for nothing else.
    private const string Policy =
        "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; font-src data:; img-src data: blob:";

    internal static string Write(SolarChart chart)
    {
        var page = new StringBuilder(4_000_000);
        page.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"").Append(Policy).Append("\">\n");
        page.Append("<title>").Append(Text(chart.Title)).Append("</title>\n<style>\n").Append(ReadingFont.FontFaceRule()).Append('\n');
        page.Append(":root { ").Append(Variables(ChartTheme.Light)).Append(" }\n");
        page.Append("@media screen and (prefers-color-scheme: dark) { :root { ").Append(Variables(ChartTheme.Dark)).Append(" } }\n");
        page.Append(Carried.Text("SolarEconomics.Charts.Export.page.css")).Append("</style>\n</head>\n<body>\n<main>\n");
        Body(page, chart);
        page.Append("</main>\n<script>").Append(PlotlyScript.Read()).Append("</script>\n");
        page.Append("<script>").Append(ChartScript.Read()).Append("</script>\n");
        page.Append("<script type=\"application/json\" id=\"figure\">").Append(chart.FigureJson).Append("</script>\n");
        page.Append("<script>").Append(Start).Append("</script>\n</body>\n</html>\n");
        return page.ToString();
    }

    private const string Start = """

        const figure = JSON.parse(document.getElementById("figure").textContent);
        const place = document.getElementById("chart");
        const dark = matchMedia("(prefers-color-scheme: dark)");
        const show = look => solarChart.draw(place, figure, look);
        const now = () => show(dark.matches ? "dark" : "light");
        dark.addEventListener("change", now);
        addEventListener("beforeprint", () => show("light"));
        addEventListener("afterprint", now);
        document.fonts.load("16px Reading").finally(now);

        """;

    private static void Body(StringBuilder page, SolarChart chart)
    {
        page.Append("<h1>").Append(Text(chart.Title)).Append("</h1>\n<p class=\"finding\">");
        if (chart.Finding.Figure.Length > 0)
        {
            page.Append("<b>").Append(Text(chart.Finding.Figure)).Append("</b> ");
        }

        page.Append(Text(chart.Finding.Words)).Append("</p>\n");
        page.Append("<figure><div id=\"chart\" role=\"img\" aria-label=\"").Append(Text(chart.AltText)).Append("\"></div></figure>\n");
        List(page, "cautions", chart.Finding.Cautions);
        List(page, "notes", chart.Finding.Notes);
        if (chart.Table.Rows.Count > 0)
        {
            page.Append("<details><summary>The numbers behind it</summary>\n");
            Table(page, chart.Table);
            page.Append("</details>\n");
        }
    }

    private static void List(StringBuilder page, string name, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            page.Append("<ul class=\"").Append(name).Append("\">").AppendJoin("", lines.Select(l => "<li>" + Text(l) + "</li>")).Append("</ul>\n");
        }
    }

    private static void Table(StringBuilder page, FindingTable table)
    {
        page.Append("<div class=\"table\"><table><caption>").Append(Text(table.Caption)).Append("</caption>\n<thead><tr>");
        page.AppendJoin("", table.Columns.Select(c => "<th scope=\"col\">" + Text(c) + "</th>")).Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            page.Append("<tr>").AppendJoin("", row.Select(c => "<td>" + Text(c) + "</td>")).Append("</tr>\n");
        }

        page.Append("</tbody></table></div>\n");
    }

    private static string Variables(ChartTheme theme) => string.Join(" ", theme.Tokens.Select(t => $"--{t.Key}: {t.Value};"));

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
