using System.Text.Json;

namespace SolarEconomics;

/// <summary>A JSON file of ours, read with comments and judged by its schema. All mistakes are listed together, with line and column.</summary>
internal sealed class CheckedJson
{
    private static readonly JsonDocumentOptions Reading = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
    private readonly string _path;
    private readonly JsonPlaces _places;

    private CheckedJson(string path, JsonElement root, JsonPlaces places)
    {
        _path = path;
        Root = root;
        _places = places;
    }

    /// <summary>The whole value of the file.</summary>
    internal JsonElement Root { get; }

    /// <summary>Reads a file as JSON, without judging it by a schema.</summary>
    /// <exception cref="RecordException">The file is missing, empty or no JSON.</exception>
    internal static CheckedJson Read(string path, string kind)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path)) throw Throw.JsonMissing(path, kind);
        byte[] utf8;
        try
        {
            utf8 = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Throw.JsonUnreadable(path, kind, e);
        }
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        if (utf8.AsSpan().StartsWith(mark)) utf8 = utf8[mark.Length..];
        if (!utf8.AsSpan().ContainsAnyExcept((byte)' ', (byte)'\t', (byte)'\r') || utf8.All(b => b is 32 or 9 or 10 or 13))
            throw Throw.JsonEmpty(path, kind);
        try
        {
            using var document = JsonDocument.Parse(utf8, Reading);
            return new CheckedJson(path, document.RootElement.Clone(), new JsonPlaces(utf8));
        }
        catch (JsonException e)
        {
            throw Throw.NotJson(path, kind, e);
        }
    }

    /// <summary>Judges the file by a schema of ours and lists what is wrong, in file order.</summary>
    /// <param name="rules">The schema.</param>
    /// <param name="places">Receives the pointers of what is wrong. Default: nobody asks.</param>
    internal IReadOnlyList<Problem> Judge(JsonRules rules, ICollection<string>? places = null)
    {
        var problems = _places.Twice.Select(p => At(p, $"field \"{JsonRules.LastName(p)}\" twice", "it once; leave one of them out")).ToList();
        // A field that stands twice has no one value to read on with: the whole file counts as refused.
        if (_places.Twice.Count > 0) places?.Add("");
        foreach (var place in TooLarge(Root, ""))
        {
            problems.Add(At(place, $"number {JsonRules.Walk(Root, place)!.Value.GetRawText()}", "a number with at most 28 digits"));
            places?.Add(place);
        }
        foreach (var (place, found, expected) in rules.Mistakes(Root))
        {
            problems.Add(At(place, found, expected));
            places?.Add(place);
        }
        return InFileOrder(problems);
    }

    internal static IReadOnlyList<Problem> InFileOrder(IEnumerable<Problem> problems) => [.. problems.Distinct().OrderBy(p => p.Line).ThenBy(p => p.Column)];

    /// <summary>Numbers that no decimal holds: JSON knows no limit.</summary>
    private static IEnumerable<string> TooLarge(JsonElement at, string pointer) => at.ValueKind switch
    {
        JsonValueKind.Number when !at.TryGetDecimal(out _) => [pointer],
        JsonValueKind.Object => at.EnumerateObject().SelectMany(f => TooLarge(f.Value, pointer + "/" + JsonPlaces.Escape(f.Name))),
        JsonValueKind.Array => at.EnumerateArray().SelectMany((item, i) => TooLarge(item, FormattableString.Invariant($"{pointer}/{i}"))),
        _ => [],
    };

    /// <summary>A problem at a place of the file.</summary>
    internal Problem At(string pointer, string found, string expected)
    {
        var (line, column) = _places.Of(pointer);
        var raw = JsonRules.Walk(Root, pointer) is { } element ? element.GetRawText() : "";
        return new Problem(_path, line, column, raw.Length > 200 ? raw[..200] : raw, found, expected, Severity.Lost);
    }

    /// <summary>Throws where anything is wrong, all mistakes in one message.</summary>
    internal void ThrowIfAny(IReadOnlyList<Problem> problems)
    {
        if (problems.Count > 0) throw Throw.JsonMistakes(_path, problems);
    }
}
