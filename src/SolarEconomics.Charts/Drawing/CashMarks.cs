using NodaTime;
using Place = SolarEconomics.Charts.LabelPlaces.Place;

namespace SolarEconomics.Charts;

/// <summary>What is marked on a cash curve: payback, or what is still open; the straight line's date; where the records end.</summary>
internal sealed class CashMarks(Figure figure, CashCurve curve, CashView view)
{
    private const double DaysPerYear = 365.25;
    private static readonly string[] Sides = ["right below", "left above", "right above", "left below"];
    private readonly LabelPlaces _places = new(figure, view);

    internal void Draw()
    {
        if (curve.Payback.LastingYears is { } years)
        {
            PaidBack(years);
        }
        else
        {
            StillOpen();
        }

        if (view.StraightLine.Count > 1)
        {
            StraightLine();
        }

        if (view.LastRecorded is { } last)
        {
            RecordsEnd(last);
        }
    }

    private void PaidBack(double years)
    {
        var (theme, culture) = (figure.Theme, figure.Frame.Culture);
        var date = curve.Payback.LastingDate ?? After(years);
        if (curve.Payback.FirstYears is { } first && years - first > 0.05)
        {
            Dot("first", After(first), 0, theme.Card, theme.Ink, $"first above zero after {PeopleNumber.Years(first, culture)}, not for good");
        }

        Dot("payback", date, 0, theme.Ink, theme.Card, $"paid back after {PeopleNumber.Years(years, culture)}, on {PeopleNumber.Date(date, culture)}");
        _places.Label($"paid back after {PeopleNumber.Years(years, culture)}", strong: true, "payback", Sides.Select(s => new Place(date, 0, s)));
    }

    private void StillOpen()
    {
        var (theme, culture) = (figure.Theme, figure.Frame.Culture);
        var end = curve.Points[^1];
        var horizon = $"{PeopleNumber.Number(curve.Payback.HorizonYears, 0, culture)} years";
        var text = end.Position.Amount < 0
            ? $"not paid back within {horizon}: {MoneyStyle.For([end.Position], culture).Write(-end.Position)} still open"
            : $"above zero, but not for good within {horizon}";
        Dot("not paid back", end.Date, Fields.Round(end.Position), theme.Card, theme.Ink, text);
        var step = (view.High - view.Low) / 25;
        var at = (double)end.Position.Amount;
        _places.Label(text, strong: true, "payback", Enumerable.Range(0, 10).SelectMany(i => new[]
        {
            new Place(end.Date, at + i * step, "left above"), new Place(end.Date, at - i * step, "left below"),
        }));
    }

    private void StraightLine()
    {
        var text = curve.StraightLinePaybackYears is { } years
            ? $"straight line says {PeopleNumber.Years(years, figure.Frame.Culture)}"
            : "straight line: not paid back";
        var places = new List<Place>();
        if (curve.StraightLinePaybackYears is { } paid && After(paid) <= view.End)
        {
            Dot("straight line payback", After(paid), 0, figure.Theme.Soft, figure.Theme.Card, text);
            places.AddRange(Sides.Reverse().Select(s => new Place(After(paid), 0, s)));
            places.Insert(0, new Place(After(paid), 0, "left above"));
        }

        // Along the line, from its upper end: left of a rising line is free, and so is its right where the curve is far below.
        foreach (var share in Enumerable.Range(1, 18).Select(i => 1 - i * 0.05))
        {
            var date = view.DateAt(share);
            if (view.StraightLineAt(date) is { } amount && amount > view.Low && amount < view.High)
            {
                places.Add(new Place(date, amount, "left above"));
                places.Add(new Place(date, amount, "right below"));
            }
        }

        _places.Label(text, strong: false, "straight line", places);
    }

    private void RecordsEnd(CashPoint last)
    {
        figure.Shape(new Fields
        {
            ["name"] = "records end", ["type"] = "line", ["yref"] = "paper", ["x0"] = Fields.Iso(last.Date), ["x1"] = Fields.Iso(last.Date),
            ["y0"] = 0, ["y1"] = 1, ["layer"] = "below",
            ["line"] = new Fields { ["color"] = figure.Theme.Soft, ["width"] = Math.Round(figure.Preset.LinePx * 0.3, 1), ["dash"] = "dot" },
        });
        var (bottom, top) = (view.Low + 0.01 * (view.High - view.Low), view.High - 0.01 * (view.High - view.Low));
        _places.Label("records end here", strong: false, "records end",
        [
            new Place(last.Date, bottom, "right above"), new Place(last.Date, top, "right below"),
            new Place(last.Date, bottom, "left above"), new Place(last.Date, top, "left below"),
        ]);
    }

    private void Dot(string name, LocalDate date, double y, string fill, string ring, string hover)
    {
        _places.Keep(date, y);
        figure.Add("scatter", new Fields
        {
            ["name"] = name, ["mode"] = "markers", ["x"] = new[] { Fields.Iso(date) }, ["y"] = new[] { y },
            ["marker"] = new Fields
            {
                ["size"] = Math.Round(figure.Preset.LinePx * 4), ["color"] = fill,
                ["line"] = new Fields { ["color"] = ring, ["width"] = Math.Round(figure.Preset.LinePx * 0.8, 1) },
            },
            ["hoverinfo"] = "text", ["hovertext"] = new[] { hover }, ["cliponaxis"] = false,
        });
    }

    private LocalDate After(double years) => view.Start.PlusDays((int)Math.Round(years * DaysPerYear));
}
