using System.Runtime.CompilerServices;

namespace SolarEconomics.Tests.Tariffs;

internal static class TestFiles
{
    internal static string Data(string name, [CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "data", "tariffs", name));

    /// <summary>Writes a tariff file into the test run's own temporary folder.</summary>
    internal static string Write(string text)
    {
        var path = Path.Combine(Path.GetTempPath(), "tariff-" + Guid.NewGuid().ToString("N") + ".json");
        File.WriteAllText(path, text);
        return path;
    }
}
