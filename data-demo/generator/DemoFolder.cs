namespace AlderWeir;

/// <summary>Finds the folder of the committed demo files from any folder inside the repository.</summary>
public static class DemoFolder
{
    /// <summary>The path of <c>data-demo</c>, looked for beside the solution in this folder and those above it.</summary>
    /// <param name="from">A folder inside the repository.</param>
    /// <exception cref="DirectoryNotFoundException">No folder above holds the solution.</exception>
    public static string Find(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "SolarEconomics.sln")))
                return Path.Combine(folder.FullName, "data-demo");
        throw new DirectoryNotFoundException(
            $"Found no SolarEconomics.sln in {from} or above it, expected to run inside the repository. Give the folder to write to as the only word.");
    }
}
