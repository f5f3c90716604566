using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench;

/// <summary>The notebooks of a room, each named by the question it answers. Reads the files, runs nothing.</summary>
internal static class Shelf
{
    public static IReadOnlyList<ShelfEntry> In(Room room)
    {
        var folder = Path.Combine(room.Folder, "notebooks");
        if (!Directory.Exists(folder)) folder = room.Folder;
        return [.. Directory.EnumerateFiles(folder, "*.ipynb").Order(StringComparer.Ordinal).Select(path => Entry(room, path))];
    }

    private static ShelfEntry Entry(Room room, string path)
    {
        var name = room.NameOf(path);
        try
        {
            var cells = JsonNode.Parse(File.ReadAllText(path))?["cells"] as JsonArray ?? [];
            var text = cells.Where(cell => (string?)cell?["cell_type"] == "markdown").Select(cell => TextOf(cell!["source"])).FirstOrDefault() ?? "";
            var lines = text.Split('\n').Select(line => line.Trim()).ToList();
            var heading = lines.FindIndex(line => line.StartsWith('#'));
            var about = lines.Skip(heading + 1).SkipWhile(line => line.Length == 0).TakeWhile(line => line.Length > 0 && !line.StartsWith('#'));
            return new ShelfEntry(name, heading < 0 ? Path.GetFileNameWithoutExtension(path) : lines[heading].TrimStart('#').Trim(), Prose.Plain(string.Join(' ', about)), "");
        }
        catch (Exception failure) when (failure is JsonException or IOException or UnauthorizedAccessException or InvalidOperationException)
        {
            return new ShelfEntry(name, Path.GetFileNameWithoutExtension(path), "", $"Cannot be read as a notebook: {failure.Message}");
        }
    }

    private static string TextOf(JsonNode? source) =>
        source is JsonArray lines ? string.Concat(lines.Select(line => (string?)line)) : (string?)source ?? "";
}
