using System.Globalization;

namespace SolarEconomics.Charts.Tests;

/// <summary>Every chart once, by a name for its approved files.</summary>
internal static class Samples
{
    private static readonly Dictionary<string, Func<SolarChart>> Makers = new(StringComparer.Ordinal)
    {
        ["cash-paid-back"] = () => CashSamples.PaidBack().Chart(),
        ["cash-never"] = () => CashSamples.NeverPaidBack().Chart(),
        ["cash-francs"] = () => CashSamples.InFrancs().Chart(new CashChartOptions { Culture = CultureInfo.GetCultureInfo("de-CH") }),
        ["bridge-to-date"] = () => BridgeSamples.ToDate().Chart(),
        ["bridge-outlook"] = () => BridgeSamples.Outlook().Chart(),
        ["months"] = () => MonthSamples.ThreeYears().Chart(),
        ["expected-string-lost"] = () => ExpectedSamples.StringLost().Chart(),
        ["expected-nothing-lost"] = () => ExpectedSamples.NothingLost().Chart(new ExpectedChartOptions { Culture = CultureInfo.GetCultureInfo("de-CH") }),
        ["flows"] = () => FlowSamples.Home().Chart(),
        ["flows-use"] = () => FlowSamples.Island().Chart(new FlowsChartOptions { Side = FlowSide.Use }),
        ["battery"] = () => FlowSamples.Home().ChartBattery(),
        ["chances"] = () => ChanceSamples.Plan().Chart(),
        ["tornado"] = () => ChanceSamples.Tornado().Chart(),
        ["break-even"] = () => ChanceSamples.CostsAgainstRate().Chart(),
        ["break-even-several"] = () => ChanceSamples.SeveralValues().Chart(new BreakEvenChartOptions { Culture = CultureInfo.GetCultureInfo("de-CH") }),
        ["break-even-none"] = () => ChanceSamples.NeverZero().Chart(),
        ["months-import"] = () => MonthSamples.ThreeYears().Take(12).ToList().Chart(new MonthsChartOptions { Imported = true }),
    };

    internal static IReadOnlyDictionary<string, SolarChart> All { get; } = Makers.ToDictionary(m => m.Key, m => m.Value(), StringComparer.Ordinal);

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

    /// <summary>Draws a chart anew, under the culture that the machine has now.</summary>
    internal static SolarChart Draw(string name) => Makers[name]();
}
