namespace SolarEconomics.Charts;

/// <summary>The strip under a chart of months: the share of hours without a reading, hatched, so that a low bar is not taken for a dull month.</summary>
internal static class MissingStrip
{
    /// <summary>Share of the plot's height that the strip and the gap above it take.</summary>
    internal const double Share = 0.14;

    private const double Height = 0.09;

    internal static void Draw(Figure figure, MonthsView view, string[] months)
    {
        var culture = figure.Frame.Culture;
        figure.Add("bar", new Fields
        {
            ["name"] = "readings missing", ["x"] = months, ["y"] = view.MissingShare.Select(s => s > 0 ? (object)Fields.Round(s) : null).ToArray(), ["yaxis"] = "y2", ["showlegend"] = false,
            ["xperiod"] = "M1", ["xperiodalignment"] = "middle",
            ["marker"] = new BarMark(figure.Theme.Ink, "/", IsOutlined: true).Marker(figure.Theme, figure.Preset),
            ["hoverinfo"] = "text",
            ["hovertext"] = view.MissingShare.Select(s => $"{PeopleNumber.Percent(s, culture)} of hours without a reading").ToArray(),
        });
        figure.Axis("yaxis2", new Fields
        {
            ["domain"] = new[] { 0, Height }, ["range"] = new[] { 0, 1 }, ["tickvals"] = new[] { 0.5 }, ["ticktext"] = new[] { "missing" }, ["showgrid"] = false, ["fixedrange"] = true,
        });
    }
}
