namespace SolarEconomics.Tests.Tariffs;

internal static class TestFiles
{
    // Runs beside each other must not write the same files; what a run wrote goes with it.
    private static readonly string Folder = MadeForThisRun();

    internal static string Data(string name) => Path.Combine(Published.Root(), "tests", "data", "tariffs", name);

    /// <summary>Writes a tariff file into the test run's own temporary folder.</summary>
    internal static string Write(string text)
    {
        var path = Path.Combine(Folder, "tariff-" + Guid.NewGuid().ToString("N") + ".json");
        File.WriteAllText(path, text);
        return path;
    }

    /// <summary>An empty folder of its own within the run's.</summary>
    internal static string NewFolder() => Directory.CreateDirectory(Path.Combine(Folder, Guid.NewGuid().ToString("N"))).FullName;

    private static string MadeForThisRun()
    {
        var made = Directory.CreateTempSubdirectory("tariff-tests-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(made, recursive: true);
        return made;
    }
}
