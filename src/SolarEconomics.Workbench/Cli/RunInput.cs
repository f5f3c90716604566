using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Reads what <c>run</c> is given, and says in words what cannot be used.</summary>
internal static class RunInput
{
    /// <summary>The notebook with its assumptions set; null, after a message, where it cannot be run.</summary>
    public static async Task<NotebookDocument?> Read(string path, RunOptions options, Io io)
    {
        try
        {
            var document = NotebookDocument.Load(path);
            var problems = new List<string>();
            var values = options.Set.Select(s => Split(s, problems)).OfType<KeyValuePair<string, string>>().ToList();
            problems.AddRange(problems.Count > 0 ? NotebookAssumptions.Of(document).Check(values) : NotebookAssumptions.Set(document, values));
            CheckSave(options, io, problems);
            return problems.Count == 0 ? document : await Refuse(problems, io);
        }
        catch (Exception e) when (e is NotebookFormatException or IOException or UnauthorizedAccessException)
        {
            return await Refuse([e.Message], io);
        }
    }

    // A run may take minutes: a place that cannot be written to is said before it, not after.
    private static void CheckSave(RunOptions options, Io io, List<string> problems)
    {
        if (options.Save is null) return;
        var folder = Path.GetDirectoryName(Path.GetFullPath(options.Save, io.Folder));
        if (!Directory.Exists(folder)) problems.Add($"--save {options.Save}: found no folder {folder}, expected one that is there.");
    }

    private static KeyValuePair<string, string>? Split(string typed, List<string> problems)
    {
        var at = typed.IndexOf('=', StringComparison.Ordinal);
        if (at > 0) return new(typed[..at].Trim(), typed[(at + 1)..]);
        problems.Add($"--set {typed}: found no name and value, expected name=value such as discountRate=0.05.");
        return null;
    }

    private static async Task<NotebookDocument?> Refuse(IEnumerable<string> problems, Io io)
    {
        foreach (var problem in problems) await io.Error.WriteLineAsync(problem);
        return null;
    }
}
