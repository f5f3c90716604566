using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>All messages of the charts: found, where, expected, what to do.</summary>
internal static class Throw
{
    internal static InvalidOperationException NoScript(string resource) =>
        new($"Found no resource \"{resource}\" in the Plotly.NET assembly, expected plotly.js {PlotlyScript.Version} there. " +
            "Restore the version of Plotly.NET that Directory.Packages.props names.");

    internal static InvalidOperationException NothingCarried(string name) =>
        new($"Found no resource \"{name}\" in SolarEconomics.Charts, expected the file that the project embeds under that name. Build the project anew.");

    internal static ArgumentException NothingToDraw(int found, string what, int expected, string parameter) =>
        new($"Found {found.ToString(CultureInfo.InvariantCulture)} {what}, expected at least {expected.ToString(CultureInfo.InvariantCulture)}. Work the result out over a span that its records cover.", parameter);

    internal static ArgumentException NoBattery() =>
        new("Found a plant without a battery, expected one with usable energy above 0 kWh. Give the plant a battery, for example new EnergySystem { Battery = Battery.Of(10, 0.9) }, or draw Chart() instead.", "flows");
}
