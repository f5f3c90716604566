namespace SolarEconomics.Charts.Tests;

/// <summary>A test that needs the system's Chromium. It is skipped, with the command that installs it, where there is none;
/// with SOLARECONOMICS_REQUIRE_ALL=1 it runs and fails instead.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Chromium.WhyNot;
}
