using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>What every chart lets its author choose. All have a default: <c>result.Chart()</c> is enough.</summary>
public abstract record ChartOptions
{
    /// <summary>Heading of the chart. Default: the result's own.</summary>
    public string? Title { get; init; }

    /// <summary>How numbers and dates are written; the words are English. Default: invariant, so that a figure is the same everywhere.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>Size. Default: for the notebook page.</summary>
    public ChartPreset Preset { get; init; } = ChartPreset.Notebook;

    /// <summary>Colours. Default: light; a page recolours the figure itself.</summary>
    public ChartTheme Theme { get; init; } = ChartTheme.Light;

    /// <summary>Small line under a headed picture, for example site, origin and date. Default: which days the records cover, where the result tells.</summary>
    public string? Footnote { get; init; }
}
