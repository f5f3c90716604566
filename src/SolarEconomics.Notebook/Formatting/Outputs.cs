using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>Outputs in the shape of the file format (nbformat 4.5), keys in alphabetical order.</summary>
internal static class Outputs
{
    internal static JsonObject Printed(string stream, string text) => new()
    {
        ["name"] = stream,
        ["output_type"] = "stream",
        ["text"] = MultilineText.Write(text),
    };

    internal static JsonObject Result(ShownValue value, int runNumber) => new()
    {
        ["data"] = value.Data,
        ["execution_count"] = runNumber,
        ["metadata"] = value.Metadata,
        ["output_type"] = "execute_result",
    };

    internal static JsonObject Shown(ShownValue value) => new()
    {
        ["data"] = value.Data,
        ["metadata"] = value.Metadata,
        ["output_type"] = "display_data",
    };

    /// <summary>Stands in for an output that no page could show.</summary>
    internal static JsonObject TooLong(long bytes) => Printed("stderr",
        FormattableString.Invariant($"This output of {bytes / 1048576} MB is too long to show and was left out. Show a part of it, or write it to a file.\n"));

    internal static JsonObject Failed(StepError error) => new()
    {
        ["ename"] = error.Name,
        ["evalue"] = error.Message,
        ["output_type"] = "error",
        ["traceback"] = new JsonArray([.. error.Lines.Prepend($"{error.Name}: {error.Message}").Select(l => (JsonNode)JsonValue.Create(l))]),
    };
}
