using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Keeps one notebook: a journal within a moment of each change, the file itself soon after, earlier versions; and never writes over what somebody else wrote.</summary>
internal sealed class Keeper : IDisposable
{
    private readonly TimeProvider time;
    private readonly NotebookJournal journal;
    private FileMark known;

    public Keeper(string path, NotebookState saved, StateFolder state, TimeProvider time)
    {
        (Path, this.time) = (path, time);
        known = FileMark.Of(path);
        journal = new NotebookJournal(path, saved);
        Versions = new Versions(state, path, time);
        try { AtomicFile.RemoveHalves(path); }
        catch (Exception failure) when (DiskWords.Is(failure))
        {
            // They are in nobody's way; a folder that takes nothing is said when something is to be saved.
            LocalLog.Current.Write(failure);
        }
    }

    /// <summary>The file saved to; another one beside it once the first was changed from outside.</summary>
    public string Path { get; private set; }

    public Versions Versions { get; }

    /// <summary>Puts what changed into the journal. Says why not, where it cannot.</summary>
    public string? Note(NotebookState now)
    {
        try
        {
            journal.Append(now, time.GetUtcNow());
            return null;
        }
        catch (Exception failure) when (DiskWords.Is(failure))
        {
            LocalLog.Current.Write(failure);
            return $"Not kept on the disk: {DiskWords.Of(failure, Path)}";
        }
    }

    /// <summary>Saves, and says so or why not.</summary>
    public (bool IsSaved, string Words) Save(NotebookDocument document)
    {
        try
        {
            var moved = MoveAsideIfChanged();
            var noVersion = KeepVersionOfFile();
            document.Save(Path);
            known = FileMark.Of(Path);
            journal.Empty(document.FileState());
            return (true, moved + string.Create(CultureInfo.InvariantCulture, $"Saved {time.GetLocalNow():HH:mm}") + noVersion);
        }
        catch (Exception failure) when (DiskWords.Is(failure))
        {
            LocalLog.Current.Write(failure);
            return (false, $"Not saved: {DiskWords.Of(failure, Path)}");
        }
    }

    /// <summary>Whether another program changed the file since it was read or saved here. A file that is gone is written anew.</summary>
    public bool IsChangedOutside
    {
        get
        {
            if (FileMark.Quick(Path) is not { } quick || quick == known.Times) return false;
            var now = FileMark.Of(Path);
            if (now.Content == known.Content) known = now;
            return now.Content.Length > 0 && now.Content != known.Content;
        }
    }

    /// <summary>Takes the file as it is now for the one that is known: what it holds was shown, or is kept elsewhere.</summary>
    public void Adopt() => known = FileMark.Of(Path);

    /// <summary>Keeps a state that is not gone on with; false where it cannot be kept.</summary>
    public bool KeepVersion(NotebookState state)
    {
        try
        {
            Versions.Keep(Encoding.UTF8.GetBytes(state.ToJson()), time.GetUtcNow());
            return true;
        }
        catch (Exception failure) when (DiskWords.Is(failure))
        {
            LocalLog.Current.Write(failure);
            return false;
        }
    }

    public void Dispose() => journal.Dispose();

    private string KeepVersionOfFile()
    {
        if (!Versions.IsDue || !File.Exists(Path)) return "";
        try
        {
            Versions.Keep(File.ReadAllBytes(Path), new DateTimeOffset(File.GetLastWriteTimeUtc(Path)));
            return "";
        }
        catch (Exception failure) when (DiskWords.Is(failure))
        {
            LocalLog.Current.Write(failure);
            return "; earlier versions cannot be kept";
        }
    }

    private string MoveAsideIfChanged()
    {
        if (!IsChangedOutside) return "";
        var name = System.IO.Path.GetFileNameWithoutExtension(Path);
        Path = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(Path)!, string.Create(CultureInfo.InvariantCulture, $"{name} (page {time.GetLocalNow():yyyy-MM-dd HHmmss}).ipynb"));
        return $"The file was changed by another program: both are kept, this one as {System.IO.Path.GetFileName(Path)}. ";
    }

    /// <summary>How a file is known again: quickly by its time and length, surely by its content.</summary>
    private sealed record FileMark((DateTime Written, long Length) Times, string Content)
    {
        public static (DateTime Written, long Length)? Quick(string path) => new FileInfo(path) is { Exists: true } file ? (file.LastWriteTimeUtc, file.Length) : null;

        public static FileMark Of(string path)
        {
            if (Quick(path) is not { } times) return new(default, "");
            using var file = File.OpenRead(path);
            return new(times, Convert.ToHexString(SHA256.HashData(file)));
        }
    }
}
