namespace SolarEconomics.Charts.Tests;

/// <summary>Every chart once, by a name for its approved files.</summary>
internal static class Samples
{
    internal static IReadOnlyDictionary<string, SolarChart> All { get; } = new Dictionary<string, SolarChart>(StringComparer.Ordinal)
    {
        ["cash-paid-back"] = CashSamples.PaidBack().Chart(),
        ["cash-never"] = CashSamples.NeverPaidBack().Chart(),
        ["bridge-to-date"] = BridgeSamples.ToDate().Chart(),
        ["bridge-outlook"] = BridgeSamples.Outlook().Chart(),
        ["months"] = MonthSamples.ThreeYears().Chart(),
        ["months-import"] = MonthSamples.ThreeYears().Take(12).ToList().Chart(new MonthsChartOptions { Imported = true }),
    };

    internal static IReadOnlyList<ChartPreset> Presets { get; } = [ChartPreset.Notebook, ChartPreset.Video, ChartPreset.Report];

    internal static IReadOnlyList<ChartTheme> Themes { get; } = [ChartTheme.Light, ChartTheme.Dark];

    internal static TheoryData<string> Names
    {
        get
        {
            var names = new TheoryData<string>();
            foreach (var name in All.Keys)
            {
                names.Add(name);
            }

            return names;
        }
    }
}
