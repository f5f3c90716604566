namespace SolarEconomics.Notebook;

/// <summary>Where and how a session works.</summary>
public sealed record SessionOptions
{
    /// <summary>Folder from which relative paths in the code start: the notebook's own. Default: the current folder.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    /// <summary>Name of the culture in which results are written. Default: <c>en-IE</c>.</summary>
    public string Culture { get; init; } = NotebookCulture.DefaultName;

    /// <summary>Memory at which the session's process is ended, in bytes; 0 sets no limit. Default: 3 GiB, so that a laptop of 8 GB stays usable.</summary>
    public long MemoryLimitBytes { get; init; } = 3L << 30;
}
