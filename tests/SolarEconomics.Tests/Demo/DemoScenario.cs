using System.Globalization;
using System.Text;
using AlderWeir;

namespace SolarEconomics.Tests.Demo;

/// <summary>The invented site, made once for all tests, with a plain reader of its own so that it is not judged by the library.</summary>
public static class DemoScenario
{
    private static readonly Lazy<ScenarioResult> Made = new(() => Scenario.Make(Scenario.CommittedSeed));

    public static ScenarioResult Result => Made.Value;

    public static TrueFlows Truth => Made.Value.Truth;

    public static string Folder => DemoFolder.Find(AppContext.BaseDirectory);

    public static string Text(string file) => Encoding.UTF8.GetString(Result.Files[file]);

    /// <summary>Rows below the header, split at commas; only for files or fields without quotes.</summary>
    public static List<string[]> Rows(string file) =>
        [.. Text(file).TrimEnd('\n').Split('\n').Where(l => !l.StartsWith('#')).Skip(1).Select(l => l.Split(','))];

    /// <summary>One column of meter.csv; null where the field is empty.</summary>
    public static double?[] Column(string header)
    {
        var names = Text("meter.csv").Split('\n').First(l => !l.StartsWith('#')).Split(',');
        var at = Array.IndexOf(names, header);
        Assert.True(at >= 0, $"no column {header}");
        return [.. MeterRows.Value.Select(r => r[at].Length == 0 ? (double?)null : double.Parse(r[at], CultureInfo.InvariantCulture))];
    }

    public static readonly Lazy<List<string[]>> MeterRows = new(() => Rows("meter.csv"));
}
