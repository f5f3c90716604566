using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A journal that a program left behind when it ended without saving: what the notebook was at the last moment.</summary>
public sealed class LeftJournal
{
    private LeftJournal(string path, NotebookState state, DateTimeOffset at, int changes) => (Path, State, At, Changes) = (path, state, at, changes);

    /// <summary>Path of the journal.</summary>
    public string Path { get; }

    /// <summary>The notebook with the last changes.</summary>
    public NotebookState State { get; }

    /// <summary>When the last change was written.</summary>
    public DateTimeOffset At { get; }

    /// <summary>How many times something was written; at least 1.</summary>
    public int Changes { get; }

    /// <summary>The journals beside a notebook that tell of changes its file does not have; oldest first. Those that say nothing new are removed.</summary>
    /// <param name="notebook">Path of the notebook.</param>
    /// <param name="saved">The notebook as its file has it.</param>
    /// <exception cref="NotebookFormatException">A newer version of this program wrote a journal.</exception>
    public static IReadOnlyList<LeftJournal> Beside(string notebook, NotebookState saved)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentNullException.ThrowIfNull(saved);
        var left = new List<LeftJournal>();
        foreach (var path in JournalName.AllOf(notebook).ToList())
        {
            if (LinesOf(path) is not { } lines || (lines.Count > 0 && !IsOurs(lines[0], path))) continue;
            if (Read(path, lines, saved) is { } journal && !journal.State.IsSameAs(saved)) left.Add(journal);
            else TryDelete(path);
        }
        return [.. left.OrderBy(journal => journal.At)];
    }

    /// <summary>Removes the journal, once what it holds is kept elsewhere or not wanted.</summary>
    public void Delete() => File.Delete(Path);

    private static LeftJournal? Read(string path, IReadOnlyList<string> lines, NotebookState saved)
    {
        var (state, at, changes) = (saved, default(DateTimeOffset), 0);
        foreach (var line in lines.Skip(1))
        {
            // The line that was being written when the program ended; nothing can follow it.
            if (JournalLine.Apply(line, state) is not { } next) break;
            (state, at, changes) = (next.State, next.At, changes + 1);
        }
        return changes == 0 ? null : new LeftJournal(path, state, at, changes);
    }

    private static bool IsOurs(string first, string path)
    {
        try
        {
            var version = (int?)JsonNode.Parse(first)?["version"];
            if (version > JournalLine.Version) throw Throw.NewerJournal(path, version.Value);
            return version is not null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or FormatException)
        {
            return false;
        }
    }

    /// <summary>The lines; null while the program that writes them lives, or where they cannot be read.</summary>
    private static IReadOnlyList<string>? LinesOf(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.None);
            using var reader = new StreamReader(file);
            var lines = new List<string>();
            while (reader.ReadLine() is { } line) lines.Add(line);
            return lines;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void TryDelete(string path)
    {
        try { File.Delete(path); }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // In a folder that may not be written it stays, and says nothing new the next time either.
            _ = e;
        }
    }
}
