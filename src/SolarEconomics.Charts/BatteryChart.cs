using System.Globalization;
using NodaTime;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>How full a battery was, and what went into it and came out.</summary>
public static class BatteryChart
{
    /// <summary>Draws the stored energy of some days as a line over hourly bars: into the battery upwards, out of it downwards. Of more than two weeks it draws
    /// each day's lowest and highest charge.</summary>
    /// <param name="flows">A run of the flow model with a battery.</param>
    /// <param name="options">Choices; the default draws three days for the notebook page.</param>
    /// <exception cref="ArgumentException">The plant has no battery, or the run holds none of the days.</exception>
    public static SolarChart ChartBattery(this EnergyFlows flows, BatteryChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(flows);
        options ??= new BatteryChartOptions();
        if (flows.System.Battery is not { UsableKwh: > 0 }) throw Throw.NoBattery();
        var view = BatteryView.Of(flows, options.From, options.Days);
        var finding = BatterySentence.Say(view, flows, options.Culture);
        return new SolarChart("battery", view.IsDaily ? "Range bar chart" : "Line chart with bars", finding, BatteryTable.Of(view, options.Culture),
            ChartFrame.From(options, view.IsDaily ? "How full the battery was, day by day" : "The battery, hour by hour", finding, $"Control: {flows.ControlName}."), frame => Draw(view, frame));
    }

    private static GenericChart Draw(BatteryView view, ChartFrame frame)
    {
        var figure = new Figure(frame, new Room(Left: 3.6, Below: 3.2, Above: frame.Preset.IsResponsive ? MonthsKey.Rows : 0));
        var key = new MonthsKey(figure);
        var marks = view.IsDaily ? DrawDays(figure, view) : DrawHours(figure, view);
        figure.Unit(view.IsDaily ? "Stored (kWh)" : "Stored (kWh), in and out (kWh an hour)", rowsBelow: frame.Preset.IsResponsive ? 1 : 0);
        var energy = new Fields { ["tickformat"] = ",.3~g", ["nticks"] = 7, ["fixedrange"] = true, ["range"] = new[] { Fields.Round(view.Bottom), Fields.Round(view.Top) }, ["domain"] = new[] { 0, key.Ceiling } };
        figure.ZeroLine(energy);
        figure.Axis("yaxis", energy);
        var days = Period.DaysBetween(view.Start, view.End);
        var at = new Fields
        {
            ["type"] = "date", ["showgrid"] = false, ["fixedrange"] = true, ["hoverformat"] = view.IsDaily ? "%-d %b %Y" : "%-d %b, %H:%M",
            ["tickformat"] = view.IsDaily ? days > 70 ? "%b<br>%Y" : "%-d %b<br>%Y" : "%H:%M<br>%-d %b",
            ["dtick"] = view.IsDaily ? days > 70 ? "M1" : Milliseconds(24 * 7) : Milliseconds(days <= 1 ? 3 : days <= 3 ? 12 : 24 * Math.Max(1, (int)Math.Ceiling(days / 7.0))),
            ["range"] = new[] { Fields.Iso(view.Start), Fields.Iso(view.End) },
        };
        // A month's name stands in the middle of the month, clear of the value axis.
        if (view.IsDaily && days > 70) at["ticklabelmode"] = "period";
        figure.Axis("xaxis", at);
        key.Draw(marks);
        return figure.Finish(new Fields(key.Layout()) { ["barmode"] = "relative", ["bargap"] = view.IsDaily ? 0.05 : 0.12, ["hovermode"] = "x unified" });
    }

    private static long Milliseconds(int hours) => hours * 3_600_000L;

    private static List<(string, BarMark)> DrawHours(Figure figure, BatteryView view)
    {
        var (theme, preset, culture) = (figure.Theme, figure.Preset, figure.Frame.Culture);
        var marks = new List<(string, BarMark)>();
        Bars("into the battery", BarMark.Of(Destination.UsedFromStorage, theme), view.Hours.Select(h => h.InKwh), 1);
        Bars("out to use", BarMark.Of(Destination.UsedDirectly, theme), view.Hours.Select(h => h.ToUseKwh), -1);
        Bars("out to export", BarMark.Of(Destination.Exported, theme), view.Hours.Select(h => h.ToExportKwh), -1);
        figure.Add("scatter", new Fields
        {
            ["name"] = "stored", ["mode"] = "lines", ["x"] = view.Points.Select(p => BatteryView.Iso(p.At)).ToArray(), ["y"] = view.Points.Select(p => Fields.Round(p.StoredKwh)).ToArray(),
            ["line"] = new Fields { ["color"] = theme.Ink, ["width"] = Math.Round(preset.LinePx * 0.8, 1) },
            ["hoverinfo"] = "text", ["hovertext"] = view.Points.Select(p => $"{PeopleNumber.Kwh(p.StoredKwh, culture)} stored, {PeopleNumber.Percent(p.StoredKwh / view.UsableKwh, culture)}").ToArray(),
        });
        marks.Add(("stored", BarMark.Total(theme)));
        return marks;

        void Bars(string name, BarMark mark, IEnumerable<double> energies, int sign)
        {
            var kwh = energies.ToArray();
            // What would be drawn as 0 is none.
            if (!kwh.Any(k => Fields.Round(k) > 0)) return;
            figure.Add("bar", new Fields
            {
                ["name"] = name, ["x"] = view.Hours.Select(h => BatteryView.Iso(h.Start)).ToArray(), ["y"] = kwh.Select(k => Fields.Round(sign * k)).ToArray(),
                ["xperiod"] = Milliseconds(1), ["xperiodalignment"] = "middle", ["marker"] = mark.Marker(theme, preset),
                ["hoverinfo"] = "text", ["hovertext"] = kwh.Select(k => k > 0 ? $"{PeopleNumber.Kwh(k, culture)} {name}" : "").ToArray(),
            });
            marks.Add((name, mark));
        }
    }

    private static List<(string, BarMark)> DrawDays(Figure figure, BatteryView view)
    {
        var (theme, culture) = (figure.Theme, figure.Frame.Culture);
        var mark = new BarMark(theme.Stored, "");
        figure.Add("bar", new Fields
        {
            ["name"] = "lowest to highest charge", ["x"] = view.Days.Select(d => Fields.Iso(d.Date)).ToArray(), ["base"] = view.Days.Select(d => Fields.Round(d.LowKwh)).ToArray(),
            ["y"] = view.Days.Select(d => Fields.Round(d.HighKwh - d.LowKwh)).ToArray(), ["xperiod"] = Milliseconds(24), ["xperiodalignment"] = "middle",
            ["marker"] = mark.Marker(theme, figure.Preset),
            ["hoverinfo"] = "text", ["hovertext"] = view.Days.Select(d => $"{PeopleNumber.Number(d.LowKwh, 1, culture)} to {PeopleNumber.Number(d.HighKwh, 1, culture)} kWh stored").ToArray(),
        });
        return [("lowest to highest charge", mark)];
    }
}
