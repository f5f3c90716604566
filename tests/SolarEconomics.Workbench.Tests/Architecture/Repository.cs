namespace SolarEconomics.Workbench.Tests;

/// <summary>The checkout that the tests were built from.</summary>
internal static class Repository
{
    internal static string Root { get; } = Find(AppContext.BaseDirectory);

    internal static string File(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>Source files of the project's own, without what builds and bundles leave.</summary>
    internal static IEnumerable<string> Sources(string folder, string pattern) =>
        Directory.EnumerateFiles(File(folder), pattern, SearchOption.AllDirectories)
            .Where(path => !Path.GetRelativePath(Root, path).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "vendor" or "node_modules"));

    private static string Find(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "SolarEconomics.sln"))) return folder.FullName;
        throw new DirectoryNotFoundException($"Found no SolarEconomics.sln in {from} or above it.");
    }
}
