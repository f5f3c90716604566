using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics;

/// <summary>What is left of a tariff file without what its schema refuses, so that the mistakes of the rest can be listed with those.</summary>
internal static class TariffFileRest
{
    private static readonly string[] Needed = ["name", "from"];

    /// <summary>The rest: refused list items are null, so that the places of the others stay; refused fields are gone. <see langword="null"/> where too little is left.</summary>
    /// <param name="root">A file.</param>
    /// <param name="places">JSON pointers of what is refused.</param>
    internal static JsonElement? Of(JsonElement root, IReadOnlyCollection<string> places)
    {
        if (root.ValueKind != JsonValueKind.Object || places.Any(IsVital)) return null;
        var rest = JsonNode.Parse(root.GetRawText(), documentOptions: new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true })!.AsObject();
        foreach (var place in places) Drop(rest, [.. place.Split('/').Skip(1)]);
        return JsonSerializer.SerializeToElement(rest);
    }

    /// <summary>The version in which a place lies; <see langword="null"/> where it lies in none.</summary>
    internal static int? VersionOf(string place) => place.Split('/') is [_, "tariffs", var number, ..] ? int.Parse(number, CultureInfo.InvariantCulture) : null;

    private static bool IsVital(string place) => place is "" or "/version" or "/currency" or "/tariffs";

    private static void Drop(JsonObject rest, string[] names)
    {
        if (names[0] != "tariffs")
        {
            rest.Remove(names[0]);
            return;
        }
        var versions = rest["tariffs"]!.AsArray();
        var number = int.Parse(names[1], CultureInfo.InvariantCulture);
        if (names.Length == 2) versions[number] = null;
        if (versions[number] is not JsonObject version) return;
        if (Needed.Contains(names[2], StringComparer.Ordinal)) versions[number] = null;
        else if (names.Length > 3 && version[names[2]] is JsonArray list) list[int.Parse(names[3], CultureInfo.InvariantCulture)] = null;
        else version.Remove(names[2]);
    }
}
