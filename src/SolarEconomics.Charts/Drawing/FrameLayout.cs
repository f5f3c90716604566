namespace SolarEconomics.Charts;

/// <summary>The part of a layout that all charts share: paper, font, margins, heading, finding, footnote, meanings of the colours.</summary>
internal static class FrameLayout
{
    private const string FontFamily = "Reading, \"Atkinson Hyperlegible Next\", sans-serif";

    // Mean width of a letter as a share of the text size; a little high, so that lines break early rather than run out.
    internal const double LetterWidth = 0.54;

    // Plotly's own distance of two lines as a share of the text size.
    internal const double LineHeight = 1.3;

    internal static (double Width, double Height) PlotSize(ChartFrame frame, Room room)
    {
        var margin = Margin.Of(frame, room);
        return (frame.Preset.WidthPx - margin.Left - margin.Right, frame.Preset.HeightPx - margin.Top - margin.Bottom);
    }

    /// <summary>All of a layout but its axes.</summary>
    internal static Fields Of(ChartFrame frame, List<Fields> labels, List<Fields> shapes, Room room)
    {
        var (preset, theme) = (frame.Preset, frame.Theme);
        var annotations = new List<Fields>(labels);
        var margin = Margin.Of(frame, room);
        if (preset.IsHeaded)
        {
            Head(frame, annotations, margin, preset.SmallTextPx * (2.2 + room.Above));
            Foot(frame, annotations, margin, preset.SmallTextPx * room.Below);
        }

        var layout = new Fields
        {
            ["font"] = new Fields { ["family"] = FontFamily, ["size"] = preset.SmallTextPx, ["color"] = theme.Ink },
            ["paper_bgcolor"] = theme.Card,
            ["plot_bgcolor"] = theme.Card,
            ["height"] = preset.HeightPx,
            ["margin"] = new Fields { ["l"] = margin.Left, ["r"] = margin.Right, ["t"] = margin.Top, ["b"] = margin.Bottom, ["pad"] = 4 },
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

    /// <summary>Heading and first sentence of the finding.</summary>
    private static void Head(ChartFrame frame, List<Fields> annotations, Margin margin, double above)
    {
        var (preset, theme) = (frame.Preset, frame.Theme);
        var right = margin.Edge - margin.Left;
        var up = above + Margin.GapPx(preset) + margin.FindingLines.Count * preset.TextPx * LineHeight;
        annotations.Add(Fixed("heading", margin.HeadingLines, bold: true, right, up + margin.HeadingLines.Count * preset.HeadingPx * LineHeight, preset.HeadingPx, theme.Ink));
        annotations.Add(Fixed("finding", margin.FindingLines, bold: false, right, up, preset.TextPx, theme.Ink));
    }

    /// <summary>The small line at the lower edge.</summary>
    private static void Foot(ChartFrame frame, List<Fields> annotations, Margin margin, double below)
    {
        if (margin.FootLines.Count > 0)
        {
            var note = Fixed("footnote", margin.FootLines, bold: false, margin.Edge - margin.Left, -below, frame.Preset.SmallTextPx, frame.Theme.Soft);
            note["y"] = 0;
            annotations.Add(note);
        }
    }

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
