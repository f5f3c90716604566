using System.Text;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>Text of several lines as the file keeps it: one text, or a list of lines that keep their line ends.</summary>
internal static class MultilineText
{
    internal static string Read(JsonNode? node) => node switch
    {
        JsonArray lines => lines.Aggregate(new StringBuilder(), (text, line) => text.Append(line!.GetValue<string>())).ToString(),
        JsonValue value => value.GetValue<string>(),
        _ => "",
    };

    /// <summary>A list of lines: a change to one line then changes one line of the file.</summary>
    internal static JsonArray Write(string text)
    {
        var lines = new JsonArray();
        var from = 0;
        while (from < text.Length)
        {
            var end = text.IndexOf('\n', from);
            var next = end < 0 ? text.Length : end + 1;
            lines.Add((JsonNode)JsonValue.Create(text[from..next]));
            from = next;
        }
        return lines;
    }
}
