using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Reads fields of a plant file and gathers what is wrong with them.</summary>
internal sealed class PlantFields(CheckedJson json)
{
    private readonly List<Problem> _problems = [];

    /// <summary>What was found, in file order.</summary>
    internal IReadOnlyList<Problem> InOrder => [.. _problems.Distinct().OrderBy(p => p.Line).ThenBy(p => p.Column)];

    internal void Add(PlantMistake mistake) => _problems.Add(json.At(mistake.Place, mistake.Found, mistake.Expected));

    internal void Add(string pointer, string found, string expected) => Add(new PlantMistake(pointer, found, expected));

    /// <summary>The elements of a list with their places; none where the list is left out.</summary>
    internal IEnumerable<(JsonElement At, string Pointer)> Items(JsonElement at, string field, string pointer = "") =>
        at.TryGetProperty(field, out var list) ? list.EnumerateArray().Select((item, i) => (item, FormattableString.Invariant($"{pointer}/{field}/{i}"))) : [];

    internal LocalDate? Day(JsonElement at, string pointer, string field)
    {
        if (Text(at, field) is not { } text) return null;
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success) return parsed.Value;
        Add(pointer + "/" + field, $"\"{text}\"", "a day that exists, such as \"2022-03-01\"");
        return null;
    }

    /// <summary>The thing that a field names; <see langword="null"/>, with a mistake said, where there is none of that name.</summary>
    internal T? Named<T>(JsonElement at, string pointer, string field, IReadOnlyDictionary<string, T> known, string kind)
        where T : class
    {
        if (Text(at, field) is not { } name) return null;
        if (known.TryGetValue(name, out var found)) return found;
        Add(pointer + "/" + field, $"\"{name}\"", known.Count == 0
            ? $"the name of {kind} of this file; it has none" : $"the name of {kind} of this file, such as {Nearest.List(name, known.Keys)}");
        return null;
    }

    internal static string? Text(JsonElement at, string field) => at.TryGetProperty(field, out var text) ? text.GetString() : null;

    internal static double? Number(JsonElement at, string field) => at.TryGetProperty(field, out var number) ? number.GetDouble() : null;

    internal static int? Whole(JsonElement at, string field) => at.TryGetProperty(field, out var number) ? (int)number.GetDouble() : null;
}
