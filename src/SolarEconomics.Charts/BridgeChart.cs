using System.Globalization;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>The bridge from the straight-line answer to the honest one, a bar for each correction.</summary>
public static class BridgeChart
{
    /// <summary>Draws a bridge: first and last bar in ink, each correction between them where the one before it ended.</summary>
    /// <param name="bridge">The bridge of the value to date or of the outlook.</param>
    /// <param name="options">Choices; the default draws the printed order for the notebook page.</param>
    /// <remarks>Energy has its own colours, costs paid theirs; what is no flow (ageing, prices, tax, time) is hatched ink. Where the bridge says what the
    /// result stands at after a correction, it is written under its bar, in the printed order only.</remarks>
    public static SolarChart Chart(this Bridge bridge, BridgeChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        options ??= new BridgeChartOptions();
        var finding = bridge.Say(options.Culture);
        var footnote = options.Parts == BridgeParts.PrintedOrder
            ? "One correction after another, in this order."
            : "Each correction as its average over all orders.";
        return new SolarChart("bridge", "Bar chart", finding, Rows(bridge, options.Culture),
            ChartFrame.From(options, bridge.Title, finding, footnote), frame => Draw(bridge, options.Parts, frame));
    }

    private static GenericChart Draw(Bridge bridge, BridgeParts parts, ChartFrame frame)
    {
        var (theme, preset, culture) = (frame.Theme, frame.Preset, frame.Culture);
        var bars = BridgeBar.All(bridge, parts, theme, culture);
        var labels = bars.Select(b => b.LinesFor((int)(preset.WidthPx * 0.9 / bars.Count / (preset.SmallTextPx * 0.56)))).ToList();
        var figure = new Figure(frame, new Room(Left: 0, Below: 0.9 + 1.3 * labels.Max(l => l.Count)));
        var positions = Enumerable.Range(0, bars.Count).ToArray();
        foreach (var (at, bar) in positions.Zip(bars))
        {
            figure.Add("bar", new Fields
            {
                ["name"] = bar.Label, ["x"] = new[] { at }, ["y"] = new[] { Fields.Round(bar.To - bar.From) }, ["base"] = new[] { Fields.Round(bar.From) },
                ["width"] = 0.74, ["marker"] = bar.Mark.Marker(theme, preset), ["hoverinfo"] = "text", ["hovertext"] = new[] { bar.Hover },
            });
            Amount(figure, at, bar);
        }

        Links(figure, bars);
        var (low, high) = (Math.Min(0, bars.Min(b => Math.Min(b.From, b.To))), Math.Max(0, bars.Max(b => Math.Max(b.From, b.To))));
        var height = Math.Max(high - low, 1);
        figure.Unit($"Each bar in {Figure.UnitOf(bridge.Start)}");
        // Each bar says its amount: numbers at the side would say it twice.
        var amounts = new Fields
        {
            ["range"] = new[] { Fields.Round(low - (low < 0 ? height * 0.14 : 0)), Fields.Round(high + height * 0.13) },
            ["fixedrange"] = true, ["showgrid"] = false, ["showticklabels"] = false,
        };
        figure.ZeroLine(amounts);
        figure.Axis("yaxis", amounts);
        figure.Axis("xaxis", new Fields
        {
            ["tickvals"] = positions, ["ticktext"] = labels.Select(l => string.Join("<br>", l)).ToArray(), ["tickangle"] = 0,
            ["range"] = new[] { -0.5, bars.Count - 0.5 }, ["showgrid"] = false, ["fixedrange"] = true,
        });
        return figure.Finish(new Fields { ["barmode"] = "overlay", ["showlegend"] = false, ["hovermode"] = "closest" });
    }

    /// <summary>The amount at the bar's outer end.</summary>
    private static void Amount(Figure figure, int at, BridgeBar bar) => figure.Annotate(new Fields
    {
        ["name"] = "amount", ["text"] = "<b>" + Sentences.Escape(bar.Amount) + "</b>", ["showarrow"] = false, ["borderpad"] = 0,
        ["x"] = at, ["xanchor"] = "center", ["y"] = Fields.Round(bar.IsBelowZero ? Math.Min(bar.From, bar.To) : Math.Max(bar.From, bar.To)),
        ["yanchor"] = bar.IsBelowZero ? "top" : "bottom", ["yshift"] = Math.Round(figure.Preset.LinePx * (bar.IsBelowZero ? -0.8 : 0.4), 1),
        ["font"] = Figure.Font(figure.Preset.TextPx, figure.Theme.Ink),
    });

    /// <summary>A dotted line from the end of each bar to the start of the next.</summary>
    private static void Links(Figure figure, IReadOnlyList<BridgeBar> bars)
    {
        for (var i = 0; i + 1 < bars.Count; i++)
        {
            figure.Shape(new Fields
            {
                ["name"] = "link", ["type"] = "line", ["x0"] = i + 0.37, ["x1"] = i + 1 - 0.37, ["y0"] = Fields.Round(bars[i].To), ["y1"] = Fields.Round(bars[i].To),
                ["line"] = new Fields { ["color"] = figure.Theme.Soft, ["width"] = Math.Round(figure.Preset.LinePx * 0.35, 1), ["dash"] = "dot" },
            });
        }
    }

    private static FindingTable Rows(Bridge bridge, CultureInfo culture)
    {
        var money = BridgeBar.Style(bridge, culture);
        IReadOnlyList<string> Row(Correction c) =>
        [
            c.Label, money.Change(c.Part), money.Change(c.ShapleyPart),
            money.Change(c.SmallestPart), money.Change(c.LargestPart), c.Standing ?? "",
        ];
        return new FindingTable($"{bridge.Title} ({Figure.UnitOf(bridge.Start)})",
            ["Correction", "In this order", "Average of all orders", "Smallest", "Largest", "Stands at"],
            [
                [bridge.StartLabel, money.Write(bridge.Start), money.Write(bridge.Start), "", "", ""],
                .. bridge.Corrections.Select(Row),
                [bridge.EndLabel, money.Write(bridge.End), money.Write(bridge.End), "", "", ""],
            ]);
    }
}
