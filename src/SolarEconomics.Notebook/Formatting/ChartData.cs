using System.Text.Json.Nodes;
using SolarEconomics.Charts;

namespace SolarEconomics.Notebook;

/// <summary>A chart as data that the page and other clients draw themselves; words and table stand beside it for those who cannot.</summary>
internal static class ChartData
{
    /// <summary>The MIME type under which notebook clients look for a figure of plotly.</summary>
    internal const string MimeType = "application/vnd.plotly.v1+json";

    internal static ShownValue Of(SolarChart chart)
    {
        // A chart of a finding's own table tells it once.
        var finding = chart.Table.Columns.Count == 0 ? chart.Finding
            : chart.Finding with { Tables = [.. chart.Finding.Tables.Where(t => t.Caption != chart.Table.Caption), chart.Table] };
        return new(
            new JsonObject
            {
                [MimeType] = JsonNode.Parse(chart.FigureJson),
                ["text/html"] = MultilineText.Write(FindingHtml.Of(finding)),
                ["text/plain"] = MultilineText.Write(chart.AltText),
            },
            new JsonObject { ["solareconomics"] = new JsonObject { ["alt"] = chart.AltText, ["name"] = chart.Name } });
    }
}
