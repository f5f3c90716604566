namespace SolarEconomics.Workbench;

/// <summary>The folder the page may read and write: the nearest one that holds <c>notebooks/</c>, or the notebook's own.</summary>
/// <remarks>Confines the page's own requests only. Code in a step runs with the user's rights, and the page says so.</remarks>
internal sealed class Room
{
    private Room(string folder) => Folder = folder;

    /// <summary>Full path, links resolved, no separator at the end.</summary>
    public string Folder { get; }

    /// <summary>The room around a notebook or a folder.</summary>
    public static Room Around(string place)
    {
        var own = Directory.Exists(place) ? place : Path.GetDirectoryName(Path.GetFullPath(place))!;
        // Started from elsewhere without a name, the program still finds the notebooks that came with it.
        var starts = Directory.Exists(place) ? [own, AppContext.BaseDirectory] : new[] { own };
        var found = starts.SelectMany(FolderAndAbove).FirstOrDefault(folder => Directory.Exists(Path.Combine(folder, "notebooks")));
        return new Room(Real(found ?? own));
    }

    /// <summary>The full path of a notebook that the page names, or null when it is outside the room, is no notebook or is not there.</summary>
    public string? Find(string name)
    {
        if (name.Length is 0 or > 1000 || name.Contains('\0', StringComparison.Ordinal)) return null;
        var path = Path.GetFullPath(name, Folder);
        if (!path.EndsWith(".ipynb", StringComparison.OrdinalIgnoreCase) || !File.Exists(path)) return null;
        var real = Real(path);
        return Holds(real) ? real : null;
    }

    /// <summary>The name the page uses for a file: relative to the room, with forward slashes.</summary>
    public string NameOf(string path) => Path.GetRelativePath(Folder, Real(path)).Replace('\\', '/');

    private bool Holds(string path) => path.StartsWith(Folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private static IEnumerable<string> FolderAndAbove(string folder)
    {
        for (var here = new DirectoryInfo(folder); here is not null; here = here.Parent) yield return here.FullName;
    }

    /// <summary>The path with every link on the way resolved, so that a link cannot lead out of the room.</summary>
    private static string Real(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        var parent = Path.GetDirectoryName(full);
        if (parent is null) return full;
        var here = Path.Combine(Real(parent), Path.GetFileName(full));
        FileSystemInfo entry = Directory.Exists(here) ? new DirectoryInfo(here) : new FileInfo(here);
        return entry.LinkTarget is null ? here : Real(entry.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? here);
    }
}
