using System.Globalization;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>Where each kWh went, month by month or year by year.</summary>
public static class FlowsChart
{
    /// <summary>Draws what the arrays could have made by where it went, or the wanted use by what served it, stacked in a fixed order.</summary>
    /// <param name="flows">A run of the flow model.</param>
    /// <param name="options">Choices; the default draws generation by month for the notebook page.</param>
    /// <remarks>The height of a bar is all that could have been made, or all that was wanted: nothing is left out of the stack.</remarks>
    public static SolarChart Chart(this EnergyFlows flows, FlowsChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(flows);
        options ??= new FlowsChartOptions();
        var view = new FlowsView(flows, options.Side, options.ByYear);
        var finding = FlowsSentence.Say(view, flows, options.Culture);
        var title = options.Side is FlowSide.Generation ? "Where the generation went" : "What served the use";
        return new SolarChart("flows", "Stacked bar chart", finding, Rows(view, options.Culture),
            ChartFrame.From(options, $"{title}, {(options.ByYear ? "year by year" : "month by month")}", finding, $"Control: {flows.ControlName}."), frame => Draw(view, frame));
    }

    private static GenericChart Draw(FlowsView view, ChartFrame frame)
    {
        var figure = new Figure(frame, new Room(Left: 4.2, Below: 3.2, Above: frame.Preset.IsResponsive ? MonthsKey.Rows : 0));
        var key = new MonthsKey(figure);
        var (theme, preset, culture) = (frame.Theme, frame.Preset, frame.Culture);
        var starts = view.Starts.Select(Fields.Iso).ToArray();
        foreach (var part in view.Parts)
        {
            figure.Add("bar", new Fields
            {
                ["name"] = part.Name, ["x"] = starts, ["y"] = part.Kwh.Select(Fields.Round).ToArray(), ["xperiod"] = view.Period, ["xperiodalignment"] = "middle",
                ["marker"] = part.Mark(theme).Marker(theme, preset),
                ["hoverinfo"] = "text", ["hovertext"] = part.Kwh.Select(v => $"{PeopleNumber.Kwh(v, culture)} {part.Name}").ToArray(),
            });
        }

        figure.Unit(view.ByYear ? "Energy (kWh a year)" : "Energy (kWh a month)", rowsBelow: frame.Preset.IsResponsive ? 1 : 0);
        var energy = new Fields { ["tickformat"] = ",.0f", ["rangemode"] = "tozero", ["nticks"] = 6, ["domain"] = new[] { 0, key.Ceiling } };
        figure.ZeroLine(energy);
        figure.Axis("yaxis", energy);
        figure.Axis("xaxis", new Fields
        {
            ["type"] = "date", ["showgrid"] = false, ["tickformat"] = view.ByYear ? "%Y" : "%b<br>%Y", ["hoverformat"] = view.ByYear ? "%Y" : "%B %Y", ["ticklabelmode"] = "period",
            ["range"] = new[] { starts[0], Fields.Iso(view.End) }, ["dtick"] = view.ByYear ? "M12" : view.Starts.Count <= 18 ? "M1" : view.Starts.Count <= 48 ? "M3" : "M12",
        });
        key.Draw([.. view.Parts.Select(p => (p.Name, p.Mark(theme)))]);
        return figure.Finish(new Fields(key.Layout()) { ["barmode"] = "stack", ["bargap"] = 0.14, ["hovermode"] = "x unified" });
    }

    private static FindingTable Rows(FlowsView view, CultureInfo culture)
    {
        var rows = view.Starts.Select(IReadOnlyList<string> (start, i) =>
        [
            view.ByYear ? start.Year.ToString(culture) : PeopleNumber.Month(start.ToYearMonth(), culture),
            .. view.Parts.Select(p => PeopleNumber.Number(p.Kwh[i], 0, culture)), PeopleNumber.Number(view.Parts.Sum(p => p.Kwh[i]), 0, culture),
        ]).ToList();
        return new FindingTable(view.Side is FlowSide.Generation ? "Where the generation went (kWh)" : "What served the use (kWh)",
            [view.ByYear ? "Year" : "Month", .. view.Parts.Select(p => $"{Sentences.Capital(p.Name)} (kWh)"), view.Side is FlowSide.Generation ? "All that could have been made (kWh)" : "All that was wanted (kWh)"], rows);
    }
}
