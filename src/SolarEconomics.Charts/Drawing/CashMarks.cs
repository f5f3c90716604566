using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>What is marked on a cash curve: payback, or what is still open; the straight line's date; where the records end.</summary>
internal static class CashMarks
{
    private const double DaysPerYear = 365.25;

    internal static void Draw(Figure figure, CashCurve curve, CashView view)
    {
        var (frame, culture) = (figure.Frame, figure.Frame.Culture);
        if (view.StraightLine.Count > 1)
        {
            StraightLine(figure, curve, view);
        }

        if (view.LastRecorded is { } last)
        {
            RecordsEnd(figure, last, view);
        }

        var payback = curve.Payback;
        if (payback.LastingYears is { } years)
        {
            var date = payback.LastingDate ?? After(view.Start, years);
            if (payback.FirstYears is { } first && years - first > 0.05)
            {
                Dot(figure, "first", After(view.Start, first), 0, frame.Theme.Card, frame.Theme.Ink, $"first above zero after {PeopleNumber.Years(first, culture)}, not for good");
            }

            Dot(figure, "payback", date, 0, frame.Theme.Ink, frame.Theme.Card, $"paid back after {PeopleNumber.Years(years, culture)}, on {PeopleNumber.Date(date, culture)}");
            var side = view.ShareOf(date) > 0.6 ? "left above" : "right below";
            figure.Label($"paid back after {PeopleNumber.Years(years, culture)}", Fields.Iso(date), 0, side, strong: true, "payback");
        }
        else
        {
            var end = curve.Points[^1];
            var horizon = $"{PeopleNumber.Number(payback.HorizonYears, 0, culture)} years";
            var text = end.Position.Amount < 0
                ? $"not paid back within {horizon}: {PeopleNumber.Money(-end.Position, culture)} still open"
                : $"above zero, but not for good within {horizon}";
            Dot(figure, "not paid back", end.Date, Fields.Round(end.Position), frame.Theme.Card, frame.Theme.Ink, text);
            figure.Label(text, Fields.Iso(end.Date), Fields.Round(end.Position), "left below", strong: true, "payback");
        }
    }

    private static void StraightLine(Figure figure, CashCurve curve, CashView view)
    {
        var theme = figure.Theme;
        var text = curve.StraightLinePaybackYears is { } years
            ? $"straight line says {PeopleNumber.Years(years, figure.Frame.Culture)}"
            : "straight line: not paid back";
        var needed = figure.ShareOfWidth(text);
        if (curve.StraightLinePaybackYears is { } paid && view.ShareOf(After(view.Start, paid)) is <= 1 and var share)
        {
            Dot(figure, "straight line payback", After(view.Start, paid), 0, theme.Soft, theme.Card, text);
            // Left of a rising line is free: beside the dot, or as much higher as the label needs to stand inside the picture.
            var date = view.DateAt(Math.Max(share, needed));
            if (date <= view.StraightLine[^1].Date && view.StraightLineAt(date) < view.Low + 0.85 * (view.High - view.Low))
            {
                figure.Label(text, Fields.Iso(date), Fields.Round(view.StraightLineAt(date)), "left above", strong: false, "straight line");
                return;
            }
        }

        var height = view.Low + 0.9 * (view.High - view.Low);
        if (view.StraightLineReaches(height) is { } reached)
        {
            figure.Label(text, Fields.Iso(reached), Fields.Round(height), view.ShareOf(reached) > 1 - needed ? "left above" : "right below", strong: false, "straight line");
            return;
        }

        var end = view.StraightLine[^1];
        figure.Label(text, Fields.Iso(end.Date), Fields.Round(end.Position), "left above", strong: false, "straight line");
    }

    private static void RecordsEnd(Figure figure, CashPoint last, CashView view)
    {
        figure.Shape(new Fields
        {
            ["name"] = "records end", ["type"] = "line", ["yref"] = "paper", ["x0"] = Fields.Iso(last.Date), ["x1"] = Fields.Iso(last.Date),
            ["y0"] = 0, ["y1"] = 1, ["layer"] = "below",
            ["line"] = new Fields { ["color"] = figure.Theme.Soft, ["width"] = Math.Round(figure.Preset.LinePx * 0.3, 1), ["dash"] = "dot" },
        });
        var side = view.ShareOf(last.Date) > 0.7 ? "left above" : "right above";
        figure.Label(side[0] == 'l' ? "records end" : "records end, projected from here", Fields.Iso(last.Date), Fields.Round(view.Low + 0.01 * (view.High - view.Low)), side, strong: false, "records end");
    }

    private static void Dot(Figure figure, string name, LocalDate date, double y, string fill, string ring, string hover) => figure.Add("scatter", new Fields
    {
        ["name"] = name, ["mode"] = "markers", ["x"] = new[] { Fields.Iso(date) }, ["y"] = new[] { y },
        ["marker"] = new Fields
        {
            ["size"] = Math.Round(figure.Preset.LinePx * 4), ["color"] = fill,
            ["line"] = new Fields { ["color"] = ring, ["width"] = Math.Round(figure.Preset.LinePx * 0.8, 1) },
        },
        ["hoverinfo"] = "text", ["hovertext"] = new[] { hover }, ["cliponaxis"] = false,
    });

    private static LocalDate After(LocalDate start, double years) => start.PlusDays((int)Math.Round(years * DaysPerYear));
}
