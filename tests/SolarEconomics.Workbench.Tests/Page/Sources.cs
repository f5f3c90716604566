namespace SolarEconomics.Workbench.Tests;

/// <summary>Where the sources stand: the folder above the test's output that holds the solution.</summary>
internal static class Sources
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var here = new DirectoryInfo(AppContext.BaseDirectory); here is not null; here = here.Parent)
            if (File.Exists(Path.Combine(here.FullName, "SolarEconomics.sln"))) return here.FullName;
        throw new InvalidOperationException("These tests run from the build output inside the repository.");
    }
}
