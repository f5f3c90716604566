using System.Text.Json;
using System.Text.Json.Nodes;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>Writes a figure as JSON that is the same everywhere and safe inside a script element.</summary>
internal static class FigureText
{
    // The default encoder writes everything but plain ASCII, and every angle bracket, as \u escapes.
    private static readonly JsonSerializerOptions Compact = new() { WriteIndented = false };

    internal static string Write(GenericChart drawing)
    {
        var figure = JsonNode.Parse(GenericChart.toJson(drawing))!.AsObject();
        return figure.ToJsonString(Compact);
    }
}
