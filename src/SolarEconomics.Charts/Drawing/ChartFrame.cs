using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>What surrounds the marks of a chart: heading, size, colours, way of writing numbers.</summary>
internal sealed record ChartFrame(
    string Title, string Headline, string Footnote, ChartPreset Preset, ChartTheme Theme, CultureInfo Culture)
{
    internal static ChartFrame Plain(string title) =>
        new(title, "", "", ChartPreset.Notebook, ChartTheme.Light, CultureInfo.InvariantCulture);

    internal static ChartFrame From(ChartOptions options, string title, Finding finding, string footnote) =>
        new(options.Title ?? title, Sentences.Headline(finding), options.Footnote ?? footnote, options.Preset, options.Theme, options.Culture);
}
