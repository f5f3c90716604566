using System.Text.Json.Nodes;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Prints what the steps answered, in words: printed text and results; a chart says its finding.</summary>
internal static class RunAnswers
{
    public static async Task Print(NotebookDocument document, TextWriter to)
    {
        foreach (var step in document.Steps)
        {
            if (step.Heading is { } heading) await to.WriteLineAsync($"\n{heading}\n");
            foreach (var text in step.Outputs.Select(Words).OfType<string>())
                await to.WriteLineAsync(text.TrimEnd('\n'));
        }
    }

    private static string? Words(JsonObject output) => (string?)output["output_type"] switch
    {
        "stream" => Joined(output["text"]),
        "execute_result" or "display_data" => Joined(output["data"]?["text/plain"]),
        _ => null,
    };

    private static string? Joined(JsonNode? text) => text switch
    {
        JsonArray lines => string.Concat(lines.Select(l => (string?)l)),
        JsonValue value => (string?)value,
        _ => null,
    };
}
