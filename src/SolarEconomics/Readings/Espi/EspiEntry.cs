namespace SolarEconomics;

/// <summary>One entry of an ESPI feed: its links, and the simple fields of its resource.</summary>
internal sealed class EspiEntry
{
    internal string? Kind { get; set; }

    internal string? Title { get; set; }

    internal string? Self { get; set; }

    internal string? Up { get; set; }

    internal List<string> Related { get; } = [];

    internal Dictionary<string, string> Fields { get; } = new(StringComparer.Ordinal);

    private readonly Dictionary<string, int> _lines = new(StringComparer.Ordinal);

    internal void Take(string field, string text, int line) => (Fields[field], _lines[field]) = (text, line);

    /// <summary>Line of a field; 0 where it is left out.</summary>
    internal int LineOf(string field) => _lines.GetValueOrDefault(field);

    /// <summary>Whether an interval block's entry belongs to this meter reading: by its link, or by standing below it.</summary>
    internal bool Holds(EspiEntry block) =>
        Related.Exists(r => (block.Up is { } up && EspiFeed.SameResource(r, up)) || (block.Self is { } self && EspiFeed.SameResource(r, self)))
        || (Self is { } own && ((block.Up ?? "").StartsWith(own + "/", StringComparison.Ordinal) || (block.Self ?? "").StartsWith(own + "/", StringComparison.Ordinal)));
}
