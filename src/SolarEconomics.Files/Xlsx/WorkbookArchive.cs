using System.IO.Compression;

namespace SolarEconomics.Files;

/// <summary>The parts of a workbook that is open: its sheets, the texts that they share, how its cells are formatted, and from which day it counts.</summary>
/// <remarks>Source: readings-serial (ECMA-376, parts 1 and 2).</remarks>
internal sealed class WorkbookArchive : IDisposable
{
    private const string DefaultPath = "xl/workbook.xml";
    private readonly ZipArchive _zip;
    private readonly List<WorkbookSheet> _sheets = [];

    internal WorkbookArchive(Stream stream, string file)
    {
        _zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        var path = Relations("_rels/.rels", "").FirstOrDefault(r => r.Type.EndsWith("/officeDocument", StringComparison.Ordinal)).Target ?? DefaultPath;
        var folder = path[..(path.LastIndexOf('/') + 1)];
        var relations = Relations($"{folder}_rels/{path[folder.Length..]}.rels", folder);
        ReadSheets(path, relations);
        if (PathOf(relations, "/styles", folder + "styles.xml") is { } styles)
            using (var part = OpenPart(styles)) Formats = CellFormats.Of(part);
        if (PathOf(relations, "/sharedStrings", folder + "sharedStrings.xml") is { } texts)
            using (var part = OpenPart(texts)) Texts = SharedTexts.Of(part, file);
    }

    /// <summary>The sheets with cells, in the order of the workbook.</summary>
    internal IReadOnlyList<WorkbookSheet> Sheets => _sheets;

    internal CellFormats Formats { get; } = CellFormats.None;

    internal IReadOnlyList<string> Texts { get; } = [];

    /// <summary>Whether days count from 1904 instead of 1900.</summary>
    internal bool From1904 { get; private set; }

    internal Stream OpenPart(string path) => (EntryOf(path) ?? throw new InvalidDataException($"its part {path} is missing")).Open();

    public void Dispose() => _zip.Dispose();

    private void ReadSheets(string path, List<(string Id, string Type, string Target)> relations)
    {
        using var xml = Xml.Open(OpenPart(path));
        while (xml.Read())
        {
            if (xml.Begins("workbookPr")) From1904 = xml.IsSet("date1904");
            if (!xml.Begins("sheet")) continue;
            var id = xml.Attribute("id", withPrefix: true);
            var relation = relations.Find(r => string.Equals(r.Id, id, StringComparison.Ordinal));
            if (relation.Target is null || !relation.Type.EndsWith("/worksheet", StringComparison.Ordinal)) continue;
            _sheets.Add(new WorkbookSheet(xml.Attribute("name") ?? "", relation.Target, xml.Attribute("state") is "hidden" or "veryHidden"));
        }
    }

    private List<(string Id, string Type, string Target)> Relations(string path, string folder)
    {
        var relations = new List<(string, string, string)>();
        if (EntryOf(path) is not { } entry) return relations;
        using var xml = Xml.Open(entry.Open());
        while (xml.Read())
            if (xml.Begins("Relationship") && xml.Attribute("Target") is { } target)
                relations.Add((xml.Attribute("Id") ?? "", xml.Attribute("Type") ?? "", target.StartsWith('/') ? target[1..] : folder + target));
        return relations;
    }

    private string? PathOf(List<(string Id, string Type, string Target)> relations, string type, string usual) =>
        relations.Find(r => r.Type.EndsWith(type, StringComparison.Ordinal)).Target is { } path && EntryOf(path) is not null ? path : EntryOf(usual) is not null ? usual : null;

    private ZipArchiveEntry? EntryOf(string path) =>
        _zip.GetEntry(path) ?? _zip.Entries.FirstOrDefault(e => string.Equals(e.FullName.Replace('\\', '/'), path, StringComparison.OrdinalIgnoreCase));
}
