using System.Globalization;
using System.Text.Json;
using Json.Schema;

namespace SolarEconomics;

/// <summary>A JSON Schema that is part of the library, and its verdicts in our own words.</summary>
internal sealed class JsonRules
{
    private readonly JsonElement _text;
    private readonly JsonSchema _schema;

    /// <summary>The schema of an embedded resource.</summary>
    internal JsonRules(string resource)
    {
        using var stream = typeof(JsonRules).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"Found no resource \"{resource}\" in the library, expected the schema.");
        using var document = JsonDocument.Parse(stream);
        _text = document.RootElement.Clone();
        // A registry of its own: the schema's address must not clash with one that a user registered.
        _schema = JsonSchema.Build(_text, new BuildOptions { SchemaRegistry = new SchemaRegistry() });
    }

    /// <summary>What is wrong with a value, and where.</summary>
    internal IEnumerable<(string Pointer, string Found, string Expected)> Mistakes(JsonElement root)
    {
        var results = _schema.Evaluate(root, new EvaluationOptions { OutputFormat = OutputFormat.List, Culture = CultureInfo.InvariantCulture });
        if (results.IsValid) yield break;
        foreach (var detail in new[] { results }.Concat(results.Details ?? []))
        {
            if (detail.IsValid || detail.Errors is null) continue;
            var pointer = detail.InstanceLocation.ToString();
            foreach (var (keyword, message) in detail.Errors)
                foreach (var (found, expected) in InWords(root, pointer, detail.EvaluationPath.ToString(), keyword, message))
                    yield return (pointer, found, expected);
        }
    }

    /// <summary>The value at a JSON pointer; <see langword="null"/> where there is none.</summary>
    internal static JsonElement? Walk(JsonElement root, string pointer)
    {
        var at = root;
        foreach (var name in Names(pointer))
        {
            if (at.ValueKind == JsonValueKind.Object && at.TryGetProperty(name, out var child)) at = child;
            else if (at.ValueKind == JsonValueKind.Array && int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var i) && i < at.GetArrayLength()) at = at[i];
            else return null;
        }
        return at;
    }

    internal static string LastName(string pointer) => Names(pointer).LastOrDefault() ?? "";

    private IEnumerable<(string Found, string Expected)> InWords(JsonElement root, string pointer, string path, string keyword, string message)
    {
        var value = Walk(root, pointer);
        var raw = value is { } v ? Short(v.GetRawText()) : "nothing";
        var rule = SchemaAt(path);
        switch (keyword)
        {
            case "" when path.EndsWith("/additionalProperties", StringComparison.Ordinal):
                var names = SchemaAt(path[..path.LastIndexOf('/')]) is { } owner && owner.TryGetProperty("properties", out var known)
                    ? known.EnumerateObject().Select(p => p.Name).ToList() : [];
                yield return ($"field \"{LastName(pointer)}\"", $"one of the known fields, such as {Nearest.List(LastName(pointer), names)}");
                break;
            case "additionalProperties":
                // Said once for each unknown field by the case above.
                break;
            case "required" when rule is { } r && value is { } o:
                foreach (var name in r.GetProperty("required").EnumerateArray().Select(n => n.GetString()!))
                    if (!o.TryGetProperty(name, out _)) yield return ($"no field \"{name}\"", Describe(r, name));
                break;
            case "enum" when rule is { } r && value is { ValueKind: JsonValueKind.String } text:
                yield return (raw, "one of " + Nearest.List(text.GetString()!, r.GetProperty("enum").EnumerateArray().Select(e => e.ToString()), most: 8));
                break;
            default:
                yield return (raw, rule is { } d && d.TryGetProperty("description", out var words) ? words.GetString()! : message);
                break;
        }
    }

    private string Describe(JsonElement rule, string name) =>
        rule.TryGetProperty("properties", out var all) && all.TryGetProperty(name, out var one) && Description(one) is { } words
            ? $"it: {words}" : "it";

    private string? Description(JsonElement rule)
    {
        if (rule.TryGetProperty("description", out var words)) return words.GetString();
        return rule.TryGetProperty("$ref", out var reference) && Walk(_text, reference.GetString()![1..]) is { } target ? Description(target) : null;
    }

    /// <summary>Follows an evaluation path through the schema's text, through references too.</summary>
    private JsonElement? SchemaAt(string path)
    {
        JsonElement? at = _text;
        foreach (var name in Names(path))
        {
            if (at is not { } here) return null;
            // The evaluator writes "items" twice for an element of a list: once for the list, once for its element.
            if (string.Equals(name, "items", StringComparison.Ordinal) && !here.TryGetProperty("items", out _)) continue;
            at = string.Equals(name, "$ref", StringComparison.Ordinal) && here.TryGetProperty("$ref", out var reference)
                ? Walk(_text, reference.GetString()![1..])
                : Walk(here, "/" + name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
        }
        return at;
    }

    private static IEnumerable<string> Names(string pointer) => pointer.Split('/').Skip(1)
        .Select(n => n.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal));

    private static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;
}
