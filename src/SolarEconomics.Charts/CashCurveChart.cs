using System.Globalization;
using NodaTime;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>The cash position over the years, with the day from which the plant is paid back.</summary>
public static class CashCurveChart
{
    /// <summary>Draws cumulative cash: recorded thick, projected thin, the straight line dashed, payback marked.</summary>
    /// <param name="curve">The curve; at least two points.</param>
    /// <param name="options">Choices; the default draws for the notebook page.</param>
    /// <exception cref="ArgumentException">The curve has fewer than two points.</exception>
    public static SolarChart Chart(this CashCurve curve, CashChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        options ??= new CashChartOptions();
        if (curve.Points.Count < 2)
        {
            throw Throw.NothingToDraw(curve.Points.Count, curve.Points.Count == 1 ? "point of the cash position" : "points of the cash position", 2, nameof(curve));
        }

        var culture = options.Culture;
        var finding = curve.Say(culture);
        var recorded = curve.Points.LastOrDefault(p => p.IsRecorded);
        var footnote = recorded is null ? "All of it is projected." : $"Records to {PeopleNumber.Date(recorded.Date, culture)}, projected after.";
        return new SolarChart("cash-curve", "Line chart", finding, Rows(curve, culture),
            ChartFrame.From(options, "Cash since the first purchase", finding, footnote), frame => Draw(curve, options.StraightLine, frame));
    }

    private static GenericChart Draw(CashCurve curve, bool withStraightLine, ChartFrame frame)
    {
        var view = new CashView(curve, withStraightLine);
        var left = Ticks.RoomFor(view.Low, view.High, Figure.MostTicks, curve.Points[0].Position.Currency, frame.Culture);
        var figure = new Figure(frame, new Room(left, Below: 1.9));
        var (theme, line) = (frame.Theme, frame.Preset.LinePx);
        var money = Style(curve, frame.Culture);
        if (view.StraightLine.Count > 1)
        {
            figure.Add("scatter", Line("straight line", view.StraightLine, theme.Soft, line * 0.6, "dash", frame, money, "straight line"));
        }

        if (view.Recorded.Count > 1)
        {
            figure.Add("scatter", Line("recorded", view.Recorded, theme.Ink, line * 1.6, "solid", frame, money, "from records"));
        }

        if (view.Projected.Count > 1)
        {
            figure.Add("scatter", Line("projected", view.Projected, theme.Ink, line * 0.8, "solid", frame, money, "projected"));
        }

        new CashMarks(figure, curve, view).Draw();
        figure.Unit($"Cash position ({Figure.UnitOf(curve.Points[0].Position)})");
        figure.MoneyAxis("yaxis", curve.Points[0].Position.Currency, view.Low, view.High);
        figure.Axis("xaxis", new Fields
        {
            ["type"] = "date", ["showgrid"] = false, ["tickformat"] = "%Y", ["hoverformat"] = "%-d %b %Y", ["ticklabelmode"] = "instant",
            ["range"] = new[] { Fields.Iso(view.Start), Fields.Iso(view.End) }, ["nticks"] = 8,
        });
        return figure.Finish(new Fields { ["showlegend"] = false, ["hovermode"] = "x unified" });
    }

    private static Fields Line(string name, IReadOnlyList<CashPoint> points, string colour, double width, string dash, ChartFrame frame, MoneyStyle money, string origin) => new()
    {
        ["name"] = name,
        ["mode"] = "lines",
        ["x"] = points.Select(p => Fields.Iso(p.Date)).ToArray(),
        ["y"] = points.Select(p => Fields.Round(p.Position)).ToArray(),
        ["line"] = new Fields { ["color"] = colour, ["width"] = Math.Round(width, 1), ["dash"] = dash },
        ["hoverinfo"] = "text",
        ["hovertext"] = points.Select(p =>
            $"{money.Write(p.Position)} after {PeopleNumber.Years(p.Years, frame.Culture)}, {origin}").ToArray(),
    };

    private static MoneyStyle Style(CashCurve curve, CultureInfo culture) => MoneyStyle.For(curve.Points.Select(p => p.Position), culture);

    /// <summary>One row a year, and the last point.</summary>
    private static FindingTable Rows(CashCurve curve, CultureInfo culture)
    {
        var straight = new Dictionary<LocalDate, CashPoint>();
        foreach (var point in curve.StraightLine)
        {
            straight[point.Date] = point;
        }

        var money = Style(curve, culture);
        var rows = curve.Points
            .Where((p, i) => i == 0 || i == curve.Points.Count - 1 || Math.Floor(p.Years + 1e-6) > Math.Floor(curve.Points[i - 1].Years + 1e-6))
            .Select(IReadOnlyList<string> (p) =>
            [
                PeopleNumber.Date(p.Date, culture), PeopleNumber.Number(p.Years, 1, culture), money.Write(p.Position),
                straight.TryGetValue(p.Date, out var s) ? money.Write(s.Position) : "", p.IsRecorded ? "records" : "projected",
            ]).ToList();
        return new FindingTable($"Cash position by year ({Figure.UnitOf(curve.Points[0].Position)})",
            ["Date", "Years since the first purchase", "Cash position", "Straight line", "From"], rows);
    }
}
