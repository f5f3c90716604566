namespace SolarEconomics.Charts.Tests;

/// <summary>Where runs leave what people may want to look at: artifacts/ at the root of the repository, ignored by git.</summary>
internal static class Artifacts
{
    internal static string Root { get; } = FindRoot();

    internal static string Folder(string name) => Directory.CreateDirectory(Path.Combine(Root, "artifacts", name)).FullName;

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SolarEconomics.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException($"Found no SolarEconomics.sln above {AppContext.BaseDirectory}; run the tests inside the repository.");
    }
}
