namespace SolarEconomics.Tests.Tariffs;

internal static class TestFiles
{
    internal static string Data(string name) => Path.Combine(Published.Root(), "tests", "data", "tariffs", name);

    /// <summary>Writes a tariff file into the test run's own temporary folder.</summary>
    internal static string Write(string text)
    {
        var path = Path.Combine(Path.GetTempPath(), "tariff-" + Guid.NewGuid().ToString("N") + ".json");
        File.WriteAllText(path, text);
        return path;
    }
}
