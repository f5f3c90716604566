using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench;

/// <summary>Turns outputs of the file format into what the page draws: the richest form it knows, never HTML of others on the page itself.</summary>
internal static class Answers
{
    private const string Figure = "application/vnd.plotly.v1+json";

    /// <summary>Characters of text that the page is given; the document keeps all of it.</summary>
    private const int LongestText = 200_000;

    /// <summary>Characters of HTML, of a picture or of a figure that the page is given; a browser would stand still on more.</summary>
    private const int LongestHtml = 8_000_000;

    private const int LongestFigure = 24;

    public static IReadOnlyList<Answer> Of(IEnumerable<JsonObject> outputs) => [.. outputs.Select(Of).OfType<Answer>()];

    private static Answer? Of(JsonObject output) => Text(output["output_type"]) switch
    {
        "stream" => new TextAnswer(Shortened(Joined(output["text"])), IsComplaint: Text(output["name"]) == "stderr"),
        "error" => Problem(output),
        "execute_result" or "display_data" when output["data"] is JsonObject data => Shown(data, output["metadata"] as JsonObject),
        _ => null,
    };

    private static Answer? Shown(JsonObject data, JsonObject? metadata)
    {
        var html = Joined(data["text/html"]);
        if (data[Figure] is JsonObject figure)
        {
            var own = metadata?["solareconomics"] as JsonObject;
            return new ChartAnswer(figure.DeepClone(), Text(own?["name"]) ?? "chart", Text(own?["alt"]) ?? Joined(data["text/plain"]), FindingMarkup.Read(html));
        }
        foreach (var kind in new[] { "image/png", "image/jpeg" })
        {
            if (Joined(data[kind]) is { Length: > 0 } bytes) return bytes.Length > LongestHtml * 4 ? new LongAnswer("picture", bytes.Length) : new PictureAnswer($"data:{kind};base64,{bytes.ReplaceLineEndings("")}", Joined(data["text/plain"]));
        }
        if (Joined(data["image/svg+xml"]) is { Length: > 0 } drawing) return new PictureAnswer("data:image/svg+xml;utf8," + Uri.EscapeDataString(drawing), Joined(data["text/plain"]));
        if (html.Length > LongestHtml) return new LongAnswer("HTML", html.Length);
        if (html.Length > 0) return FindingMarkup.Read(html) is { } finding ? finding with { Table = Text((metadata?["solareconomics"] as JsonObject)?["table"]) } : new HtmlAnswer(html);
        return Joined(data["text/plain"]) switch
        {
            "" => null,
            // A value of a few characters is the answer itself, so it is shown as large as one.
            { Length: <= LongestFigure } text when !text.Contains('\n', StringComparison.Ordinal) => new FindingAnswer(text, "", [], [], []),
            var text => new TextAnswer(Shortened(text)),
        };
    }

    private static ProblemAnswer Problem(JsonObject output)
    {
        var message = Joined(output["evalue"]);
        var name = Text(output["ename"]) ?? "";
        var lines = (output["traceback"] as JsonArray)?.Select(line => Text(line) ?? "").Where(line => line != $"{name}: {message}") ?? [];
        var (what, rest) = message.IndexOf('\n', StringComparison.Ordinal) is > 0 and var end ? (message[..end], message[(end + 1)..]) : (message, "");
        return new ProblemAnswer(what.Length > 0 ? what : name, string.Join('\n', lines.Prepend(rest).Where(line => line.Length > 0)), name);
    }

    private static string Shortened(string text) => text.Length <= LongestText
        ? text
        : string.Create(System.Globalization.CultureInfo.CurrentCulture, $"{text.AsSpan(0, LongestText)}\n… and {text.Length - LongestText:N0} more characters, kept in the notebook's file.");

    private static string Joined(JsonNode? node) => node is JsonArray lines ? string.Concat(lines.Select(Text)) : Text(node) ?? "";

    private static string? Text(JsonNode? node) => node is JsonValue value && value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : null;
}
