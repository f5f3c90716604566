namespace SolarEconomics.Charts.Tests;

/// <summary>Where the browser of the tests is.</summary>
internal static class Chromium
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    internal static string? Path => Environment.GetEnvironmentVariable("SOLARECONOMICS_CHROMIUM") ?? Array.Find(Places, File.Exists);

    internal static string? WhyNot => Path is null && Environment.GetEnvironmentVariable("SOLARECONOMICS_REQUIRE_ALL") != "1"
        ? "Found no Chromium. Install it: apt-get install --no-install-recommends chromium; or name it in SOLARECONOMICS_CHROMIUM."
        : null;
}
