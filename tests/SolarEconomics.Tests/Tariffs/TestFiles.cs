namespace SolarEconomics.Tests.Tariffs;

internal static class TestFiles
{
    // Runs beside each other must not write the same files.
    private static readonly string Folder = Directory.CreateTempSubdirectory("tariff-tests-").FullName;

    internal static string Data(string name) => Path.Combine(Published.Root(), "tests", "data", "tariffs", name);

    /// <summary>Writes a tariff file into the test run's own temporary folder.</summary>
    internal static string Write(string text)
    {
        var path = Path.Combine(Folder, "tariff-" + Guid.NewGuid().ToString("N") + ".json");
        File.WriteAllText(path, text);
        return path;
    }
}
