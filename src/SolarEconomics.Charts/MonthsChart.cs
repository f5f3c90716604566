using System.Globalization;
using NodaTime;
using Plotly.NET;

namespace SolarEconomics.Charts;

/// <summary>Where the generation went, month by month.</summary>
public static class MonthsChart
{
    /// <summary>Draws monthly energy by destination, stacked in a fixed order: used directly, used out of the battery, exported, lost.</summary>
    /// <param name="months">Calendar months in any order; a month that is not in the list counts as one without records.</param>
    /// <param name="options">Choices; the default draws for the notebook page.</param>
    /// <remarks>A strip under the months shows the share of hours without a reading, hatched. It is left out where none is missing.</remarks>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    public static SolarChart Chart(this IReadOnlyList<MonthOfEnergy> months, MonthsChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(months);
        options ??= new MonthsChartOptions();
        if (months.Count == 0)
        {
            throw Throw.NothingToDraw(0, "months of energy", 1, nameof(months));
        }

        var view = new MonthsView(months);
        var finding = MonthsSentence.Say(view, options.Culture);
        return new SolarChart("months", "Stacked bar chart", finding, Rows(view, options.Culture),
            ChartFrame.From(options, "Where the generation went, month by month", finding, $"Records {MonthsSentence.Span(view, options.Culture)}."),
            frame => Draw(view, options.Imported, frame));
    }

    private static GenericChart Draw(MonthsView view, bool withImport, ChartFrame frame)
    {
        var figure = new Figure(frame, new Room(Left: 4.2, Below: 3.2, Above: frame.Preset.IsResponsive ? MonthsKey.Rows : 0));
        var key = new MonthsKey(figure);
        var (theme, preset, culture) = (frame.Theme, frame.Preset, frame.Culture);
        var months = view.Months.Select(Start).ToArray();
        foreach (var (destination, name, kwh) in view.Series)
        {
            figure.Add("bar", new Fields
            {
                ["name"] = name, ["x"] = months, ["y"] = kwh.Select(Fields.Round).ToArray(), ["xperiod"] = "M1", ["xperiodalignment"] = "middle",
                ["marker"] = BarMark.Of(destination, theme).Marker(theme, preset),
                ["hoverinfo"] = "text", ["hovertext"] = kwh.Select(v => $"{PeopleNumber.Kwh(v, culture)} {name}").ToArray(),
            });
        }

        if (withImport)
        {
            figure.Add("scatter", new Fields
            {
                ["name"] = "bought from the grid", ["mode"] = "lines+markers", ["x"] = months, ["y"] = view.ImportedKwh.Select(Round).ToArray(),
                ["xperiod"] = "M1", ["xperiodalignment"] = "middle", ["connectgaps"] = false,
                ["line"] = new Fields { ["color"] = theme.Ink, ["width"] = Math.Round(preset.LinePx * 0.7, 1) },
                ["marker"] = new Fields { ["color"] = theme.Card, ["size"] = Math.Round(preset.LinePx * 2), ["line"] = new Fields { ["color"] = theme.Ink, ["width"] = Math.Round(preset.LinePx * 0.6, 1) } },
                ["hoverinfo"] = "text", ["hovertext"] = view.ImportedKwh.Select(v => v is { } kwh ? $"{PeopleNumber.Kwh(kwh, culture)} bought from the grid" : "").ToArray(),
            });
        }

        var hasStrip = view.MissingShare.Any(s => s > 0);
        if (hasStrip)
        {
            MissingStrip.Draw(figure, view, months);
        }

        figure.Unit("Energy (kWh a month)", rowsBelow: frame.Preset.IsResponsive ? 1 : 0);
        var energy = new Fields { ["tickformat"] = ",.0f", ["rangemode"] = "tozero", ["nticks"] = 6, ["domain"] = new[] { hasStrip ? MissingStrip.Share : 0, key.Ceiling } };
        figure.ZeroLine(energy);
        figure.Axis("yaxis", energy);
        figure.Axis("xaxis", new Fields
        {
            ["type"] = "date", ["showgrid"] = false, ["tickformat"] = "%b<br>%Y", ["hoverformat"] = "%B %Y", ["ticklabelmode"] = "period",
            ["range"] = new[] { months[0], Fields.Iso(view.Months[^1].OnDayOfMonth(1).PlusMonths(1)) }, ["dtick"] = view.Months.Count <= 18 ? "M1" : view.Months.Count <= 48 ? "M3" : "M12",
            ["anchor"] = hasStrip ? "y2" : "y",
        });
        key.Draw([.. view.Series.Select(m => (m.Name, BarMark.Of(m.Destination, theme)))]);
        return figure.Finish(new Fields(key.Layout()) { ["barmode"] = "stack", ["bargap"] = 0.14, ["hovermode"] = "x unified" });
    }

    private static string Start(YearMonth month) => Fields.Iso(month.OnDayOfMonth(1));

    private static object? Round(double? kwh) => kwh is { } value ? Fields.Round(value) : null;

    private static FindingTable Rows(MonthsView view, CultureInfo culture)
    {
        var money = MoneyStyle.For(view.Recorded.Select(m => m.Value), culture);
        var rows = view.Recorded.Select(IReadOnlyList<string> (m) =>
        [
            PeopleNumber.Month(m.Month, culture), PeopleNumber.Number(m.UsedDirectlyKwh, 0, culture), PeopleNumber.Number(m.UsedFromStorageKwh, 0, culture),
            PeopleNumber.Number(m.ExportedKwh, 0, culture), PeopleNumber.Number(m.LostKwh, 0, culture), PeopleNumber.Number(m.ImportedKwh, 0, culture),
            money.Write(m.Value), PeopleNumber.Number(m.MissingHours, 0, culture), PeopleNumber.Number(m.CensoredHours, 0, culture),
        ]).ToList();
        return new FindingTable("Energy by month (kWh), its value, and hours without a reading",
            ["Month", "Used directly (kWh)", "Out of the battery (kWh)", "Exported (kWh)", "Lost (kWh)", "Bought (kWh)", "Value", "Hours missing", "Hours that could have made more"], rows);
    }
}
