using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>Writes JSON of a session anew as other notebook programs would: letters as themselves, keys in alphabetical order.</summary>
/// <remarks>On its way between processes a text may have been escaped; kept so, a saved answer could not be read in a comparison of two versions.</remarks>
internal static class PlainJson
{
    internal static JsonNode? Of(JsonNode? node) => node switch
    {
        JsonObject fields => new JsonObject(fields.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => KeyValuePair.Create(f.Key, Of(f.Value)))),
        JsonArray items => new JsonArray([.. items.Select(Of)]),
        JsonValue value when value.TryGetValue<string>(out var text) => JsonValue.Create(text),
        _ => node?.DeepClone(),
    };
}
