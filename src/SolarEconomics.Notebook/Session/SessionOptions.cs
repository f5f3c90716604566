namespace SolarEconomics.Notebook;

/// <summary>Where and how a session works.</summary>
public sealed record SessionOptions
{
    /// <summary>Folder from which relative paths in the code start: the notebook's own. Default: the current folder.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    /// <summary>Name of the culture in which results are written. Default: <c>en-IE</c>.</summary>
    public string Culture { get; init; } = NotebookCulture.DefaultName;
}
