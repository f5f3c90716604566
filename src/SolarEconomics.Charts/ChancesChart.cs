using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>How an amount comes out over many draws.</summary>
public static class ChancesChart
{
    private static readonly (double Share, string Label)[] Rows =
        [(0.05, "5th percentile"), (0.1, "10th percentile"), (0.25, "25th percentile"), (0.5, "Median"), (0.75, "75th percentile"), (0.9, "90th percentile"), (0.95, "95th percentile")];

    /// <summary>Draws the share of cases by amount: what loses hatched, what gains filled, with the 10th and 90th percentile and the median marked.</summary>
    /// <param name="chances">The draws.</param>
    /// <param name="options">Choices; the default draws for the notebook page.</param>
    /// <remarks>The half per cent of cases at either end lies outside the picture; table and words count all.</remarks>
    public static SolarChart Chart(this Chances chances, ChancesChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(chances);
        options ??= new ChancesChartOptions();
        var culture = options.Culture;
        var finding = chances.Say(culture);
        var money = MoneyStyle.For(Rows.Select(r => chances.At(r.Share)), culture);
        var table = new FindingTable($"{Sentences.Capital(chances.What)} over {PeopleNumber.Number(chances.Values.Count, 0, culture)} draws ({Figure.UnitOf(chances.Middle)})", ["Where", "Amount"],
            [.. Rows.Select(r => (IReadOnlyList<string>)[r.Label, money.Write(chances.At(r.Share))])]);
        return new SolarChart("chances", "Bar chart", finding, table,
            ChartFrame.From(options, $"How sure is the {chances.What}?", finding, "The half per cent of cases at either end lies outside the picture."),
            frame => Draw(chances, Math.Clamp(options.Bars, 10, 100), frame));
    }

    private static GenericChart Draw(Chances chances, int count, ChartFrame frame)
    {
        var (theme, preset, culture) = (frame.Theme, frame.Preset, frame.Culture);
        var bars = new ChanceBars(chances, count);
        var figure = new Figure(frame, new Room(Left: 2.2, Below: 1.9));
        var money = MoneyStyle.For([chances.Low, chances.Middle, chances.High], culture);
        var all = Enumerable.Range(0, bars.Shares.Length).ToList();
        Part("loses", all.Where(b => bars.Middle(b) < 0).ToList(), new BarMark(theme.Ink, "/", IsOutlined: true));
        Part("gains", all.Where(b => bars.Middle(b) >= 0).ToList(), BarMark.Total(theme));
        var top = bars.Shares.Max();
        Mark(figure, chances.Low, "1 in 10 below", money, top * 1.12, "right");
        Mark(figure, chances.Middle, "half below", money, top * 1.34, "center");
        Mark(figure, chances.High, "1 in 10 above", money, top * 1.12, "left");
        figure.Unit($"Share of all cases by {chances.What} ({Figure.UnitOf(chances.Middle)})");
        var room = (bars.To - bars.From) * 0.08;
        figure.MoneyAxis("xaxis", chances.Currency, bars.From - room, bars.To + room);
        figure.Axis("yaxis", new Fields
        {
            ["range"] = new[] { 0, Math.Round(top * 1.62, 5) }, ["fixedrange"] = true, ["showgrid"] = false, ["showticklabels"] = false,
        });
        return figure.Finish(new Fields { ["barmode"] = "overlay", ["bargap"] = 0, ["showlegend"] = false, ["hovermode"] = "closest" });

        void Part(string name, List<int> which, BarMark mark)
        {
            if (which.Count == 0) return;
            string Between(int b) => $"{money.Write(chances.Middle with { Amount = (decimal)(bars.Middle(b) - (bars.Width / 2)) })} to {money.Write(chances.Middle with { Amount = (decimal)(bars.Middle(b) + (bars.Width / 2)) })}";
            figure.Add("bar", new Fields
            {
                ["name"] = name, ["x"] = which.Select(b => Fields.Round(bars.Middle(b))).ToArray(), ["y"] = which.Select(b => Math.Round(bars.Shares[b], 5)).ToArray(),
                ["width"] = Math.Round(bars.Width * 0.9, 2), ["marker"] = mark.Marker(theme, preset), ["hoverinfo"] = "text",
                ["hovertext"] = which.Select(b => $"{PeopleNumber.Number(bars.Shares[b] * 100, 1, culture)} % of cases from {Between(b)}").ToArray(),
            });
        }
    }

    /// <summary>A line at a percentile with its amount and what it means above it.</summary>
    private static void Mark(Figure figure, Money amount, string meaning, MoneyStyle money, double height, string side)
    {
        var x = Fields.Round(amount);
        figure.Shape(new Fields
        {
            ["name"] = "percentile", ["type"] = "line", ["x0"] = x, ["x1"] = x, ["y0"] = 0, ["y1"] = Math.Round(height, 5),
            ["line"] = new Fields { ["color"] = figure.Theme.Soft, ["width"] = Math.Round(figure.Preset.LinePx * 0.5, 1), ["dash"] = "dot" },
        });
        figure.Annotate(new Fields
        {
            ["name"] = "percentile", ["text"] = $"<b>{Sentences.Escape(money.Write(amount))}</b><br>{meaning}", ["showarrow"] = false, ["borderpad"] = 0, ["bgcolor"] = figure.Theme.Card, ["align"] = side,
            ["x"] = x, ["y"] = Math.Round(height, 5), ["xanchor"] = side, ["yanchor"] = side == "center" ? "bottom" : "middle",
            ["xshift"] = side == "right" ? Math.Round(-figure.LabelGapPx * 0.7) : side == "left" ? Math.Round(figure.LabelGapPx * 0.7) : 0,
            ["font"] = Figure.Font(figure.Preset.SmallTextPx, figure.Theme.Ink),
        });
    }
}
