using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>What a notebook was on the last days: one version for every ten minutes of work, thinned to one a day after a day, gone after two weeks.</summary>
/// <param name="state">The folder of this installation.</param>
/// <param name="notebook">Full path of the notebook.</param>
/// <param name="time">The clock.</param>
internal sealed class Versions(StateFolder state, string notebook, TimeProvider time)
{
    private const string Stamp = "yyyyMMdd'T'HHmmss'Z'";
    private static readonly TimeSpan Apart = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan Thick = TimeSpan.FromDays(1);
    private static readonly TimeSpan Longest = TimeSpan.FromDays(14);

    private readonly string folder = state.File(Path.Combine("versions", FolderOf(notebook)));
    private DateTimeOffset? lastKept;

    /// <summary>Newest first.</summary>
    public IReadOnlyList<VersionEntry> All => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder, "*.ipynb").Select(Entry).OfType<VersionEntry>().OrderByDescending(entry => entry.At)]
        : [];

    /// <summary>Whether it is time to keep another one.</summary>
    public bool IsDue => lastKept is not { } last || time.GetUtcNow() - last >= Apart || time.GetUtcNow() < last;

    /// <summary>Keeps one.</summary>
    /// <param name="content">The notebook's file.</param>
    /// <param name="at">When the notebook was like that.</param>
    /// <exception cref="IOException">The disk is full.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public void Keep(ReadOnlySpan<byte> content, DateTimeOffset at)
    {
        Directory.CreateDirectory(folder);
        // The clock may have been set back, or two versions fall into one second: none replaces another.
        while (File.Exists(PathOf(at))) at = at.AddSeconds(1);
        AtomicFile.Write(PathOf(at), content);
        lastKept = time.GetUtcNow();
        Thin();
    }

    /// <summary>The notebook as it was; null when there is no such version any more.</summary>
    /// <exception cref="NotebookFormatException">The file was damaged.</exception>
    public NotebookState? Read(string name) =>
        All.Any(entry => entry.Name == name) ? NotebookDocument.Load(Path.Combine(folder, name + ".ipynb")).State() : null;

    private void Thin()
    {
        var now = time.GetUtcNow();
        var days = new HashSet<DateOnly>();
        foreach (var entry in All)
        {
            var age = now - entry.At;
            var isWanted = age < Thick || (age < Longest && days.Add(DateOnly.FromDateTime(entry.At.UtcDateTime)));
            if (!isWanted) File.Delete(Path.Combine(folder, entry.Name + ".ipynb"));
        }
    }

    private string PathOf(DateTimeOffset at) => Path.Combine(folder, at.UtcDateTime.ToString(Stamp, CultureInfo.InvariantCulture) + ".ipynb");

    private static VersionEntry? Entry(string path)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        return DateTimeOffset.TryParseExact(name, Stamp, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at) ? new VersionEntry(name, at) : null;
    }

    /// <summary>The notebook's name for people, and its whole path in a few letters, as two folders may hold one of the same name.</summary>
    private static string FolderOf(string path) =>
        $"{Path.GetFileNameWithoutExtension(path)}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(path))).AsSpan(0, 6))}";
}
