using System.Text;
using SolarEconomics.Charts;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Writes a worked-out notebook as one page that works with no network: its steps alone, charts drawn by the one script that stands inside.</summary>
internal static class ReportPage
{
    // The page may run what stands in it and may ask for nothing else.
    private const string Policy = "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; font-src data:; img-src data:; frame-src 'self'";

    public static string Write(NotebookDocument document, string name)
    {
        var title = document.Title ?? name;
        var page = new StringBuilder(4_000_000);
        page.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"").Append(Policy).Append("\">\n<title>").Append(Tags.Text(title)).Append("</title>\n<style>\n");
        page.Append(ReadingFont.FontFaceRule()).Append('\n').Append(Own("css/colours.css")).Append(Own("report/report.css")).Append("</style>\n</head>\n<body>\n<main>\n<h1>").Append(Tags.Text(title)).Append("</h1>\n");
        var steps = new ReportSteps(page);
        foreach (var step in document.Steps) steps.Write(step);
        page.Append("</main>\n");
        if (steps.HasCharts)
        {
            foreach (var script in new[] { PlotlyScript.Read(), ChartScript.Read(), Own("report/report.js") }) page.Append("<script>").Append(script).Append("</script>\n");
        }
        return page.Append("</body>\n</html>\n").ToString();
    }

    private static string Own(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "wwwroot", name));
}
