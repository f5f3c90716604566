using System.Globalization;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Which code may run: what this installation wrote, what its reader let run, and what came with the program. All else is only shown.</summary>
/// <remarks>Kept per user as fingerprints, one a line with its date; losing the file means being asked once more.</remarks>
internal sealed class LetRun(StateFolder state, TimeProvider time)
{
    private const int Most = 20_000;
    private static readonly TimeSpan Longest = TimeSpan.FromDays(400);

    private readonly Lock gate = new();
    private readonly string file = state.File("let-run.txt");
    private HashSet<string>? known;

    public bool Knows(NotebookDocument document)
    {
        // Nothing in it can run.
        if (document.Steps.All(step => step.Kind != StepKind.Code || string.IsNullOrWhiteSpace(step.Source))) return true;
        var hash = CodeHash.Of(document);
        lock (gate) return Known().Contains(hash) || Shipped.Codes.Contains(hash);
    }

    /// <summary>Lets the code of a notebook run from now on.</summary>
    public void Remember(NotebookDocument document)
    {
        var hash = CodeHash.Of(document);
        lock (gate)
        {
            if (!Known().Add(hash)) return;
            try
            {
                Directory.CreateDirectory(state.Path);
                File.AppendAllText(file, string.Create(CultureInfo.InvariantCulture, $"{time.GetUtcNow():yyyy-MM-dd} {hash}\n"));
            }
            catch (Exception failure) when (DiskWords.Is(failure))
            {
                // It holds for this run of the program; the next one asks once more.
                LocalLog.Current.Write(failure);
            }
        }
    }

    private HashSet<string> Known()
    {
        if (known is not null) return known;
        try
        {
            var lines = File.Exists(file) ? File.ReadAllLines(file) : [];
            var today = time.GetUtcNow();
            var wanted = lines.Where(line => line.Length == 75 && DateTimeOffset.TryParseExact(line[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var day) && today - day < Longest)
                .TakeLast(Most).ToList();
            if (wanted.Count < lines.Length) AtomicFile.Write(file, System.Text.Encoding.UTF8.GetBytes(string.Concat(wanted.Select(line => line + "\n"))));
            known = wanted.Select(line => line[11..]).ToHashSet(StringComparer.Ordinal);
        }
        catch (Exception failure) when (DiskWords.Is(failure))
        {
            LocalLog.Current.Write(failure);
            known = [];
        }
        return known;
    }
}
