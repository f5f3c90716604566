namespace SolarEconomics.Charts;

/// <summary>Says which mark means what. On a page it is plotly's own legend, which wraps; its samples have a fixed small size, so that
/// a picture of fixed size gets a row of samples as large as its text.</summary>
internal sealed class MonthsKey(Figure figure)
{
    /// <summary>Room above the plot, in heights of the small text.</summary>
    internal const double Rows = 2;

    internal Fields Layout()
    {
        if (!figure.Preset.IsResponsive)
        {
            return new Fields { ["showlegend"] = false };
        }

        return new Fields
        {
            ["showlegend"] = true,
            ["legend"] = new Fields
            {
                ["orientation"] = "h", ["x"] = 0, ["xanchor"] = "left", ["y"] = 1, ["yanchor"] = "bottom", ["traceorder"] = "normal",
                ["bgcolor"] = figure.Theme.Card, ["font"] = Figure.Font(figure.Preset.SmallTextPx, figure.Theme.Ink), ["itemclick"] = false, ["itemdoubleclick"] = false,
            },
        };
    }

    /// <summary>Draws the row as bars on axes of their own, which count pixels of the plot.</summary>
    internal void Draw(IReadOnlyList<(string Name, BarMark Mark)> entries)
    {
        if (figure.Preset.IsResponsive)
        {
            return;
        }

        var size = figure.Preset.SmallTextPx;
        var at = size * 0.5;
        foreach (var (name, mark) in entries)
        {
            figure.Add("bar", new Fields
            {
                ["name"] = "key", ["x"] = new[] { Math.Round(at) }, ["y"] = new[] { 1 }, ["width"] = size, ["xaxis"] = "x3", ["yaxis"] = "y3",
                ["marker"] = mark.Marker(figure.Theme, figure.Preset), ["hoverinfo"] = "skip", ["showlegend"] = false,
            });
            figure.Annotate(new Fields
            {
                ["name"] = "key", ["text"] = Sentences.Escape(name), ["showarrow"] = false, ["borderpad"] = 0, ["xref"] = "x3", ["x"] = Math.Round(at + size * 0.9),
                ["xanchor"] = "left", ["yref"] = "y3", ["y"] = 0.5, ["yanchor"] = "middle", ["font"] = Figure.Font(size, figure.Theme.Ink),
            });
            at += size * (2.6 + name.Length * FrameLayout.LetterWidth);
        }

        var share = size / figure.PlotHeightPx;
        figure.Axis("xaxis3", new Fields { ["range"] = new[] { 0, figure.PlotWidthPx }, ["visible"] = false, ["fixedrange"] = true, ["anchor"] = "y3" });
        figure.Axis("yaxis3", new Fields { ["range"] = new[] { 0, 1 }, ["domain"] = new[] { Math.Round(1 - share, 4), 1 }, ["visible"] = false, ["fixedrange"] = true, ["anchor"] = "x3" });
    }

    /// <summary>Upper end of the months' own axis, as a share of the plot.</summary>
    internal double Ceiling => figure.Preset.IsResponsive ? 1 : Math.Round(1 - 2.2 * figure.Preset.SmallTextPx / figure.PlotHeightPx, 4);
}
