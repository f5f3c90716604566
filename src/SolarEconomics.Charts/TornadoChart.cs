using System.Globalization;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>Which input moves the answer most: one bar for each, the longest on top.</summary>
public static class TornadoChart
{
    /// <summary>Draws a tornado: from the answer as it stands to the low end (hatched) and to the high end (filled) of each input, the ends written beside them.</summary>
    /// <param name="tornado">The tornado of an outlook.</param>
    /// <param name="options">Choices; the default draws for the notebook page.</param>
    public static SolarChart Chart(this Tornado tornado, TornadoChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(tornado);
        options ??= new TornadoChartOptions();
        var finding = tornado.Say(options.Culture);
        return new SolarChart("tornado", "Bar chart", finding, finding.Tables[0],
            ChartFrame.From(options, $"What moves the {tornado.Measure} most", finding, "One input at a time, each between the ends written beside its bar."),
            frame => Draw(tornado, Math.Clamp(options.MostBars, 1, 30), frame));
    }

    private static GenericChart Draw(Tornado tornado, int most, ChartFrame frame)
    {
        var (theme, preset, culture) = (frame.Theme, frame.Preset, frame.Culture);
        // Drawn from below: the longest bar comes last.
        var bars = tornado.Bars.Take(most).Reverse().ToList();
        var names = bars.Select(b => b.Range.Input.Name).ToArray();
        var left = 1.2 + (FrameLayout.LetterWidth * names.Max(n => n.Length));
        var figure = new Figure(frame, new Room(left, Below: 1.9));
        var money = MoneyStyle.For(bars.SelectMany(b => new[] { b.AtLow, b.AtHigh }), culture);
        Side(figure, "low end", bars, tornado.Base, b => b.AtLow, b => b.Range.Low, new BarMark(theme.Ink, "/", IsOutlined: true), money);
        Side(figure, "high end", bars, tornado.Base, b => b.AtHigh, b => b.Range.High, BarMark.Total(theme), money);
        foreach (var (bar, at) in bars.Select((b, i) => (b, i)))
        {
            var lowIsLeft = bar.AtLow.Amount <= bar.AtHigh.Amount;
            End(figure, at, lowIsLeft ? bar.AtLow : bar.AtHigh, Words(bar, lowIsLeft ? bar.Range.Low : bar.Range.High, culture), isLeft: true, tornado.Base);
            End(figure, at, lowIsLeft ? bar.AtHigh : bar.AtLow, Words(bar, lowIsLeft ? bar.Range.High : bar.Range.Low, culture), isLeft: false, tornado.Base);
        }

        figure.Shape(new Fields
        {
            ["name"] = "as it stands", ["type"] = "line", ["x0"] = Fields.Round(tornado.Base), ["x1"] = Fields.Round(tornado.Base), ["yref"] = "paper", ["y0"] = 0, ["y1"] = 1,
            ["line"] = new Fields { ["color"] = theme.Soft, ["width"] = Math.Round(preset.LinePx * 0.4, 1), ["dash"] = "dot" },
        });
        var (low, high) = Reach(tornado, bars);
        figure.Unit($"{Sentences.Capital(tornado.Measure)} ({Figure.UnitOf(tornado.Base)}); as it stands {money.Write(tornado.Base)}");
        figure.MoneyAxis("xaxis", tornado.Base.Currency, low, high);
        figure.Axis("yaxis", new Fields
        {
            ["tickvals"] = Enumerable.Range(0, bars.Count).ToArray(), ["ticktext"] = names.Select(Sentences.Escape).ToArray(),
            ["range"] = new[] { -0.6, bars.Count - 0.4 }, ["showgrid"] = false, ["fixedrange"] = true,
        });
        return figure.Finish(new Fields { ["barmode"] = "overlay", ["showlegend"] = false, ["hovermode"] = "closest" });
    }

    private static void Side(Figure figure, string name, List<TornadoBar> bars, Money from, Func<TornadoBar, Money> to, Func<TornadoBar, double> end, BarMark mark, MoneyStyle money) =>
        figure.Add("bar", new Fields
        {
            ["name"] = name, ["orientation"] = "h", ["y"] = Enumerable.Range(0, bars.Count).ToArray(), ["x"] = bars.Select(b => Fields.Round(to(b) - from)).ToArray(),
            ["base"] = bars.Select(_ => Fields.Round(from)).ToArray(), ["width"] = 0.62, ["marker"] = mark.Marker(figure.Theme, figure.Preset), ["hoverinfo"] = "text",
            ["hovertext"] = bars.Select(b => $"<b>{money.Write(to(b))}</b> with {Sentences.Escape(b.Range.Input.Name)} at {Words(b, end(b), figure.Frame.Culture)}").ToArray(),
        });

    /// <summary>The input's end, beside the end of its bar; both stand outside the answer as it is.</summary>
    private static void End(Figure figure, int at, Money amount, string words, bool isLeft, Money from)
    {
        var x = isLeft ? Math.Min(Fields.Round(amount), Fields.Round(from)) : Math.Max(Fields.Round(amount), Fields.Round(from));
        figure.Annotate(new Fields
        {
            ["name"] = "end", ["text"] = Sentences.Escape(words), ["showarrow"] = false, ["borderpad"] = 0, ["bgcolor"] = figure.Theme.Card, ["x"] = x, ["y"] = at,
            ["xanchor"] = isLeft ? "right" : "left", ["yanchor"] = "middle", ["xshift"] = Math.Round(figure.LabelGapPx * (isLeft ? -0.8 : 0.8), 1),
            ["font"] = Figure.Font(figure.Preset.SmallTextPx, figure.Theme.Soft),
        });
    }

    /// <summary>The bars, with room on both sides for the words at their ends.</summary>
    private static (double Low, double High) Reach(Tornado tornado, List<TornadoBar> bars)
    {
        var all = bars.SelectMany(b => new[] { b.AtLow, b.AtHigh }).Append(tornado.Base).Select(m => (double)m.Amount).ToList();
        var (low, high) = (all.Min(), all.Max());
        var width = Math.Max(high - low, 1);
        return (low - (0.26 * width), high + (0.26 * width));
    }

    private static string Words(TornadoBar bar, double value, CultureInfo culture) => bar.Range.Input.InWords(value, bar.AtLow.Currency, culture);
}
