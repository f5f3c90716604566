using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>Writes JSON as notebook programs write it: one space per level, letters of all scripts as themselves, one line end at the end.</summary>
/// <remarks>The runtime's own writer escapes emoji; a file of another program would then differ after an untouched save.</remarks>
internal static class JsonText
{
    internal static string Write(JsonNode root)
    {
        var text = new StringBuilder();
        Append(text, root, 0);
        return text.Append('\n').ToString();
    }

    /// <summary>Writes an object so that the value of one of its fields can be changed without writing the rest again.</summary>
    /// <param name="owner">The object.</param>
    /// <param name="key">The field.</param>
    /// <param name="depth">How deep the object stands in its file.</param>
    /// <param name="known">The field's text, where it is known already.</param>
    /// <returns>The text before the value, the value, and the text after it; without the field all of it is before.</returns>
    internal static (string Before, string Value, string After) WriteAround(JsonObject owner, string key, int depth, string? known = null)
    {
        var text = new StringBuilder();
        var (from, to) = (-1, -1);
        AppendList(text, owner, depth, '{', '}', (field, inner) =>
        {
            AppendString(text, field.Key);
            text.Append(": ");
            var isIt = string.Equals(field.Key, key, StringComparison.Ordinal);
            if (isIt) from = text.Length;
            if (isIt && known is not null) text.Append(known);
            else Append(text, field.Value, inner);
            if (isIt) to = text.Length;
        });
        return from < 0 ? (text.ToString(), "", "") : (text.ToString(0, from), known ?? text.ToString(from, to - from), text.ToString(to, text.Length - to));
    }

    private static void Append(StringBuilder text, JsonNode? node, int depth)
    {
        switch (node)
        {
            case null:
                text.Append("null");
                break;
            case JsonObject { Count: 0 }:
                text.Append("{}");
                break;
            case JsonArray { Count: 0 }:
                text.Append("[]");
                break;
            case JsonObject fields:
                AppendList(text, fields, depth, '{', '}', (field, inner) =>
                {
                    AppendString(text, field.Key);
                    text.Append(": ");
                    Append(text, field.Value, inner);
                });
                break;
            case JsonArray items:
                AppendList(text, items, depth, '[', ']', (item, inner) => Append(text, item, inner));
                break;
            case JsonValue value:
                AppendValue(text, value);
                break;
        }
    }

    private static void AppendList<T>(StringBuilder text, IEnumerable<T> items, int depth, char open, char close, Action<T, int> append)
    {
        var separator = open;
        foreach (var item in items)
        {
            text.Append(separator).Append('\n').Append(' ', depth + 1);
            append(item, depth + 1);
            separator = ',';
        }
        text.Append('\n').Append(' ', depth).Append(close);
    }

    private static void AppendValue(StringBuilder text, JsonValue value)
    {
        // What came from a file goes back letter for letter: 1.0 stays 1.0 and an escape stays an escape.
        if (value.TryGetValue<JsonElement>(out var read)) text.Append(read.GetRawText());
        else if (value.TryGetValue<string>(out var words)) AppendString(text, words);
        else text.Append(value.ToJsonString());
    }

    private static void AppendString(StringBuilder text, string words)
    {
        text.Append('"');
        foreach (var c in words)
        {
            switch (c)
            {
                case '"': text.Append("\\\""); break;
                case '\\': text.Append("\\\\"); break;
                case '\n': text.Append("\\n"); break;
                case '\r': text.Append("\\r"); break;
                case '\t': text.Append("\\t"); break;
                case '\b': text.Append("\\b"); break;
                case '\f': text.Append("\\f"); break;
                default:
                    if (c < ' ') text.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture));
                    else text.Append(c);
                    break;
            }
        }
        text.Append('"');
    }
}
