namespace SolarEconomics.Charts;

/// <summary>The size of a chart and of its text, for one use. Unit: pixels of the picture.</summary>
/// <param name="Name">One word for file names: <c>notebook</c>, <c>video</c>, <c>report</c>.</param>
/// <param name="WidthPx">Width of the picture; on a page a responsive chart takes the width there is.</param>
/// <param name="HeightPx">Height of the picture.</param>
/// <param name="TextPx">Size of labels that carry the finding.</param>
/// <param name="SmallTextPx">Size of axis text and footnotes; the smallest text of the picture.</param>
/// <param name="HeadingPx">Size of the heading; 0 leaves heading, words and footnote to the page around the chart.</param>
/// <param name="LinePx">Width of the main line; thinner lines follow from it.</param>
/// <param name="IsResponsive">Whether the chart follows the width of its place on a page.</param>
public sealed record ChartPreset(
    string Name, int WidthPx, int HeightPx, int TextPx, int SmallTextPx, int HeadingPx, double LinePx, bool IsResponsive)
{
    /// <summary>For the page: as wide as its card, heading and words stand around it.</summary>
    public static ChartPreset Notebook { get; } = new("notebook", 860, 400, 16, 14, 0, 3.5, true);

    /// <summary>For a video of 16:9 at 1920 × 1080: no text under 24 pixels, heading and finding inside the picture.</summary>
    public static ChartPreset Video { get; } = new("video", 1920, 1080, 34, 28, 54, 7, false);

    /// <summary>For a printed report: the width of an A4 page at 150 pixels per inch, heading and finding inside the picture.</summary>
    public static ChartPreset Report { get; } = new("report", 1000, 600, 18, 15, 26, 3.5, false);

    /// <summary>Whether heading, words and footnote stand inside the picture.</summary>
    public bool IsHeaded => HeadingPx > 0;
}
