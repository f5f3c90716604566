using System.Text.Json.Nodes;

namespace SolarEconomics.Charts.Tests;

/// <summary>Reads a figure's JSON.</summary>
internal static class Figures
{
    internal static JsonNode Of(SolarChart chart) => JsonNode.Parse(chart.FigureJson)!;

    internal static IReadOnlyList<JsonNode> Traces(SolarChart chart, string type) =>
        [.. Of(chart)["data"]!.AsArray().Where(t => (string?)t!["type"] == type).Select(t => t!)];

    /// <summary>Texts of the labels with a name, without tags.</summary>
    internal static IReadOnlyList<string> Labels(SolarChart chart, string name) =>
    [
        .. Of(chart)["layout"]!["annotations"]!.AsArray().Where(a => (string?)a!["name"] == name)
            .Select(a => ((string)a!["text"]!).Replace("<b>", "", StringComparison.Ordinal).Replace("</b>", "", StringComparison.Ordinal)),
    ];
}
