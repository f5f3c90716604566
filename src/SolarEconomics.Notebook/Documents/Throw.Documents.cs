using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>All messages of this layer: found, where, expected, what to do.</summary>
internal static partial class Throw
{
    internal static NotebookFormatException NotJson(string name, JsonException inner)
    {
        var line = (inner.LineNumber ?? 0) + 1;
        var place = (inner.BytePositionInLine ?? 0) + 1;
        return new(FormattableString.Invariant($"{name}, line {line}, place {place}: found text that is not JSON, expected a notebook (.ipynb). ") +
            "The file may be cut off or damaged by a merge; nothing was changed in it.", inner);
    }

    internal static NotebookFormatException Shape(string name, string where, JsonNode? found, string expected) =>
        new($"{name}, {where}: found {Say(found)}, expected {expected}. Nothing was changed in the file.");

    internal static NotebookFormatException Version(string name, int major) =>
        new(FormattableString.Invariant($"{name}: found notebook format {major}, expected format 4. ") + (major < 4
            ? "Save it in format 4 with the program that made it."
            : "A newer version of this program may open it. Nothing was changed in the file."));

    internal static NotebookFormatException NotText(string name, Exception inner) =>
        new($"{name}: found a text with half of a character in it (a lone surrogate), expected whole characters. Nothing was changed in the file.", inner);

    internal static NotebookFormatException NotUtf8(string name, DecoderFallbackException inner) =>
        new(FormattableString.Invariant($"{name}, byte {inner.Index}: found bytes that are not UTF-8 text, expected a notebook (.ipynb). Nothing was changed in the file."), inner);

    internal static FileNotFoundException NoNotebook(string path) =>
        new($"{path}: found no such file, expected a notebook (.ipynb).", path);

    internal static ArgumentException NoStep(string id) => new($"Found the step name \"{id}\", expected the name of a step in this notebook.", nameof(id));

    internal static UnauthorizedAccessException ReadOnly(string path) =>
        new($"{path}: found a read-only file, expected one that may be written. Save under another name, or allow writing to it.");

    private static string Say(JsonNode? node) => node switch
    {
        null => "nothing",
        JsonArray => "a list",
        JsonObject => "an object",
        _ => node.GetValueKind() switch
        {
            JsonValueKind.String => "a text",
            JsonValueKind.Number => "the number " + node.ToJsonString(),
            _ => node.ToJsonString(),
        },
    };
}
