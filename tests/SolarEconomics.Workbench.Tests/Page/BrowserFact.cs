namespace SolarEconomics.Workbench.Tests;

/// <summary>A test in a real browser: the system's Chromium. Skipped with the command that installs it; where everything is required, it runs and fails.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserFact : FactAttribute
{
    public BrowserFact()
    {
        var requiresAll = Environment.GetEnvironmentVariable("SOLARECONOMICS_REQUIRE_ALL") == "1";
        if (!requiresAll && Chromium.Path is null) Skip = "Needs Chromium: apt-get install --no-install-recommends chromium";
    }
}
