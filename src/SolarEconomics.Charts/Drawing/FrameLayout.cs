namespace SolarEconomics.Charts;

/// <summary>The part of a layout that all charts share: paper, font, margins, heading, finding, footnote, meanings of the colours.</summary>
internal static class FrameLayout
{
    private const string FontFamily = "Reading, \"Atkinson Hyperlegible Next\", sans-serif";

    // Mean width of a letter as a share of the text size; a little high, so that lines break early rather than run out.
    internal const double LetterWidth = 0.54;

    // Plotly's own distance of two lines as a share of the text size.
    private const double LineHeight = 1.3;

    /// <summary>All of a layout but its axes.</summary>
    internal static Fields Of(ChartFrame frame, List<Fields> labels, List<Fields> shapes, Room room)
    {
        var (preset, theme) = (frame.Preset, frame.Theme);
        var annotations = new List<Fields>(labels);
        var edge = preset.IsHeaded ? preset.HeadingPx : 8;
        var left = Math.Round(edge + room.Left * preset.SmallTextPx);
        var belowPx = room.Below * preset.SmallTextPx;
        // Above the plot stands the unit of the value axis.
        var top = Math.Round(preset.SmallTextPx * (2.2 + room.Above));
        var bottom = Math.Round(edge * 0.75 + belowPx);
        if (preset.IsHeaded)
        {
            top += Head(frame, annotations, edge, left, top);
            bottom += Foot(frame, annotations, edge, left, belowPx);
        }

        var layout = new Fields
        {
            ["font"] = new Fields { ["family"] = FontFamily, ["size"] = preset.SmallTextPx, ["color"] = theme.Ink },
            ["paper_bgcolor"] = theme.Card,
            ["plot_bgcolor"] = theme.Card,
            ["height"] = preset.HeightPx,
            ["margin"] = new Fields { ["l"] = left, ["r"] = edge + preset.SmallTextPx, ["t"] = top, ["b"] = bottom, ["pad"] = 4 },
            ["separators"] = frame.Culture.NumberFormat.NumberDecimalSeparator + frame.Culture.NumberFormat.NumberGroupSeparator,
            ["hoverlabel"] = new Fields
            {
                ["bgcolor"] = theme.Paper, ["bordercolor"] = theme.Ink, ["align"] = "left",
                ["font"] = new Fields { ["family"] = FontFamily, ["size"] = preset.SmallTextPx, ["color"] = theme.Ink },
            },
            ["dragmode"] = false,
            ["annotations"] = annotations,
            ["shapes"] = shapes,
            ["meta"] = new Fields { ["look"] = theme.Name, ["title"] = frame.Title, ["tokens"] = Tokens() },
        };
        if (preset.IsResponsive)
        {
            layout["autosize"] = true;
        }
        else
        {
            layout["width"] = preset.WidthPx;
        }

        return layout;
    }

    /// <summary>Heading and first sentence of the finding; returns the height they need.</summary>
    private static double Head(ChartFrame frame, List<Fields> annotations, int edge, double left, double above)
    {
        var (preset, theme) = (frame.Preset, frame.Theme);
        var room = preset.WidthPx - 2 * edge;
        var heading = Lines(frame.Title, preset.HeadingPx, room);
        var finding = Lines(frame.Headline, preset.TextPx, room);
        var headingPx = heading.Count * preset.HeadingPx * LineHeight;
        var findingPx = finding.Count * preset.TextPx * LineHeight;
        var gap = preset.TextPx * 0.8;
        annotations.Add(Fixed("heading", heading, bold: true, edge - left, above + gap + findingPx + headingPx, preset.HeadingPx, theme.Ink));
        annotations.Add(Fixed("finding", finding, bold: false, edge - left, above + gap + findingPx, preset.TextPx, theme.Ink));
        return Math.Round(edge * 0.7 + headingPx + findingPx + gap);
    }

    /// <summary>The small line at the lower edge; returns the height it needs.</summary>
    private static double Foot(ChartFrame frame, List<Fields> annotations, int edge, double left, double below)
    {
        if (frame.Footnote.Length == 0)
        {
            return 0;
        }

        var lines = Lines(frame.Footnote, frame.Preset.SmallTextPx, frame.Preset.WidthPx - 2 * edge);
        var note = Fixed("footnote", lines, bold: false, edge - left, -below, frame.Preset.SmallTextPx, frame.Theme.Soft);
        note["y"] = 0;
        annotations.Add(note);
        return Math.Round(lines.Count * frame.Preset.SmallTextPx * LineHeight + frame.Preset.SmallTextPx * 0.4);
    }

    private static IReadOnlyList<string> Lines(string text, int sizePx, double roomPx) =>
        Sentences.Wrap(text, (int)(roomPx / (sizePx * LetterWidth)));

    /// <summary>Text at a fixed place of the picture, counted from the plot's upper left corner.</summary>
    private static Fields Fixed(string name, IReadOnlyList<string> lines, bool bold, double rightPx, double upPx, int sizePx, string colour)
    {
        var text = string.Join("<br>", lines.Select(Sentences.Escape));
        return new Fields
        {
            ["name"] = name, ["text"] = bold ? "<b>" + text + "</b>" : text, ["showarrow"] = false, ["align"] = "left",
            ["xref"] = "paper", ["yref"] = "paper", ["x"] = 0, ["y"] = 1, ["xanchor"] = "left", ["yanchor"] = "top",
            ["xshift"] = Math.Round(rightPx), ["yshift"] = Math.Round(upPx), ["borderpad"] = 0,
            ["font"] = Figure.Font(sizePx, colour),
        };
    }

    private static Fields Tokens()
    {
        var tokens = new Fields();
        foreach (var (light, dark) in ChartTheme.Light.Tokens.Zip(ChartTheme.Dark.Tokens))
        {
            tokens[light.Key] = new Fields { ["light"] = light.Value, ["dark"] = dark.Value };
        }

        return tokens;
    }
}
