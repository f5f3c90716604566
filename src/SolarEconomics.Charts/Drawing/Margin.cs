namespace SolarEconomics.Charts;

/// <summary>Room around the plot, and the lines of text that stand in it. Unit: pixels.</summary>
internal sealed record Margin(
    double Edge, double Left, double Right, double Top, double Bottom,
    IReadOnlyList<string> HeadingLines, IReadOnlyList<string> FindingLines, IReadOnlyList<string> FootLines)
{
    internal static Margin Of(ChartFrame frame, Room room)
    {
        var preset = frame.Preset;
        var edge = preset.IsHeaded ? preset.HeadingPx : 8;
        var across = preset.WidthPx - 2 * edge;
        var heading = Lines(preset.IsHeaded ? frame.Title : "", preset.HeadingPx, across);
        var finding = Lines(preset.IsHeaded ? frame.Headline : "", preset.TextPx, across);
        var foot = Lines(preset.IsHeaded ? frame.Footnote : "", preset.SmallTextPx, across);
        var head = preset.IsHeaded
            ? edge * 0.7 + GapPx(preset) + FrameLayout.LineHeight * (heading.Count * preset.HeadingPx + finding.Count * preset.TextPx)
            : 0;
        // Above the plot stands the unit of the value axis.
        var top = preset.SmallTextPx * (2.2 + room.Above) + head;
        var bottom = edge * 0.75 + preset.SmallTextPx * (room.Below + (foot.Count > 0 ? foot.Count * FrameLayout.LineHeight + 0.4 : 0));
        return new Margin(edge, Math.Round(edge + room.Left * preset.SmallTextPx), edge + preset.SmallTextPx, Math.Round(top), Math.Round(bottom), heading, finding, foot);
    }

    /// <summary>Between the finding and the unit.</summary>
    internal static double GapPx(ChartPreset preset) => preset.TextPx * 0.8;

    private static IReadOnlyList<string> Lines(string text, int sizePx, double acrossPx) =>
        text.Length == 0 ? [] : Sentences.Wrap(text, (int)(acrossPx / (sizePx * FrameLayout.LetterWidth)));
}
