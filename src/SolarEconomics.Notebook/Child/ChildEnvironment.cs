using System.Diagnostics;
using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>What a session's process finds in its environment: no secrets, a heap with a limit, no telemetry.</summary>
internal static class ChildEnvironment
{
    private static readonly string[] SecretWords = ["TOKEN", "SECRET", "PASSWORD", "PASSWD", "CREDENTIAL", "APIKEY", "API_KEY", "ACCESS_KEY", "PRIVATE_KEY"];

    internal static void Prepare(ProcessStartInfo start, long memoryLimitBytes)
    {
        foreach (var name in start.Environment.Keys.Where(IsSecret).ToList()) start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1";
        // A process that is ended leaves the pipes of its diagnostics behind in the temporary folder, two files each time.
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        // One session on a laptop: a heap per core would cost memory and win nothing.
        start.Environment["DOTNET_gcServer"] = "0";
        start.Environment["DOTNET_TieredPGO"] = "0";
        // Code that asks for too much then gets an exception that its step reports; only what is not on the heap is ended from outside.
        if (memoryLimitBytes > 0)
            start.Environment["DOTNET_GCHeapHardLimit"] = (memoryLimitBytes / 5 * 4).ToString("X", CultureInfo.InvariantCulture);
    }

    internal static bool IsSecret(string name) =>
        SecretWords.Any(word => name.Contains(word, StringComparison.OrdinalIgnoreCase));
}
