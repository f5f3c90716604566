namespace SolarEconomics.Notebook.Tests;

/// <summary>Notebooks that another program wrote: see data/outside/SOURCE.txt.</summary>
internal static class Outside
{
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "data", "outside");

    public static string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));

    public static NotebookDocument Load(string name) => NotebookDocument.Load(Path.Combine(Folder, name));
}
