namespace SolarEconomics.Benchmarks;

/// <summary>Folders of the checkout that the program was built from.</summary>
internal static class Places
{
    internal static string Root { get; } = Find(AppContext.BaseDirectory);

    internal static string Project => Path.Combine(Root, "tests", "SolarEconomics.Benchmarks");

    internal static string Results => Path.Combine(Project, "results");

    /// <summary>Made input, the same for the same seed; under artifacts/, which is ignored.</summary>
    internal static string Made(string file) => Path.Combine(Directory.CreateDirectory(Path.Combine(Root, "artifacts", "benchmarks")).FullName, file);

    private static string Find(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "SolarEconomics.sln"))) return folder.FullName;
        throw new DirectoryNotFoundException($"Found no SolarEconomics.sln in {from} or above it.");
    }
}
