using System.Globalization;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>What a place made day by day beside what it should have made, with the events in which it fell short.</summary>
public static class ExpectedChart
{
    /// <summary>Draws measured energy as bars, what an event lost on top of them, and the expectation as a stepped line.</summary>
    /// <param name="result">The result; at least one day in the span drawn.</param>
    /// <param name="options">Choices; the default draws for the notebook page.</param>
    /// <exception cref="ArgumentException">The span holds no day of the record.</exception>
    public static SolarChart Chart(this ExpectedAgainstMeasured result, ExpectedChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        options ??= new ExpectedChartOptions();
        var view = new ExpectedView(result, options.Days);
        if (view.Days.Count == 0)
        {
            throw Throw.NothingToDraw(0, "days of the record", 1, nameof(options));
        }

        var culture = options.Culture;
        var finding = result.Say(culture);
        var footnote = $"{PeopleNumber.Date(view.Span.Start, culture)} to {PeopleNumber.Date(view.Span.End.PlusDays(-1), culture)} of a record of {PeopleNumber.Number(result.Days.Count, 0, culture)} days.";
        return new SolarChart("expected", "Bar chart with a line", finding, Rows(view, culture),
            ChartFrame.From(options, $"Expected and measured: {result.Device}", finding, footnote), frame => Draw(view, frame));
    }

    private static GenericChart Draw(ExpectedView view, ChartFrame frame)
    {
        var figure = new Figure(frame, new Room(Left: 3.6, Below: 3.2));
        var (theme, preset, culture) = (frame.Theme, frame.Preset, frame.Culture);
        var days = view.Days.Select(d => Fields.Iso(d.Date)).ToArray();
        figure.Add("bar", new Fields
        {
            ["name"] = "measured", ["x"] = days, ["y"] = view.Days.Select(d => Round(d.MeasuredKwh)).ToArray(), ["marker"] = new Fields { ["color"] = theme.Soft },
            ["hoverinfo"] = "text", ["hovertext"] = view.Days.Select(d => d.MeasuredKwh is { } kwh ? $"{PeopleNumber.Kwh(kwh, culture)} measured" : "").ToArray(),
        });
        if (view.LostKwh.Any(kwh => kwh > 0))
        {
            figure.Add("bar", new Fields
            {
                ["name"] = "lost", ["x"] = days, ["y"] = view.LostKwh.Select(Round).ToArray(), ["marker"] = BarMark.Of(Destination.Lost, theme).Marker(theme, preset),
                ["hoverinfo"] = "text", ["hovertext"] = view.LostKwh.Select(v => v is { } kwh ? $"{PeopleNumber.Kwh(kwh, culture)} lost" : "").ToArray(),
            });
        }

        figure.Add("scatter", new Fields
        {
            ["name"] = "expected", ["mode"] = "lines", ["x"] = days, ["y"] = view.Days.Select(d => d.ExpectedKwh > 0 ? Round(d.ExpectedKwh) : null).ToArray(), ["connectgaps"] = false,
            ["line"] = new Fields { ["color"] = theme.Ink, ["width"] = Math.Round(preset.LinePx * 0.8, 1), ["shape"] = "hvh" },
            ["hoverinfo"] = "text", ["hovertext"] = view.Days.Select(d => $"{PeopleNumber.Kwh(d.ExpectedKwh, culture)} expected").ToArray(),
        });
        foreach (var (text, date, height, side) in view.Labels(culture))
        {
            figure.Label(text, Fields.Iso(date), height, side, strong: !string.Equals(text, ExpectedView.LineName, StringComparison.Ordinal));
        }

        figure.Unit("Energy (kWh a day)");
        var energy = new Fields { ["tickformat"] = ",.0f", ["range"] = new[] { 0, Fields.Round(view.Top) }, ["nticks"] = 6, ["fixedrange"] = true };
        figure.ZeroLine(energy);
        figure.Axis("yaxis", energy);
        figure.Axis("xaxis", new Fields
        {
            ["type"] = "date", ["showgrid"] = false, ["tickformat"] = "%-d %b<br>%Y", ["hoverformat"] = "%-d %b %Y",
            ["tick0"] = Fields.Iso(view.Span.Start.PlusDays(Math.Max(3, view.Span.Days / 14))), ["dtick"] = view.DaysBetweenTicks * 86_400_000L,
            ["range"] = new[] { Fields.Iso(view.Span.Start.PlusDays(-1)), Fields.Iso(view.Span.End) },
        });
        return figure.Finish(new Fields { ["barmode"] = "stack", ["bargap"] = 0.2, ["showlegend"] = false, ["hovermode"] = "x unified" });
    }

    private static object? Round(double? kwh) => kwh is { } value ? Fields.Round(value) : null;

    private static FindingTable Rows(ExpectedView view, CultureInfo culture)
    {
        var rows = view.Days.Select(IReadOnlyList<string> (d, i) =>
        [
            PeopleNumber.Date(d.Date, culture),
            d.ExpectedKwh > 0 ? PeopleNumber.Number(d.ExpectedKwh, 1, culture) : "",
            d.MeasuredKwh is { } kwh ? PeopleNumber.Number(kwh, 1, culture) : "",
            view.LostKwh[i] is { } lost ? PeopleNumber.Number(lost, 1, culture) : "",
        ]).ToList();
        return new FindingTable("Energy by day (kWh)", ["Day", "Expected (kWh)", "Measured (kWh)", "Lost in an event (kWh)"], rows);
    }
}
