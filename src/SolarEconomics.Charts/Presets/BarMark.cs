namespace SolarEconomics.Charts;

/// <summary>How a bar looks: its colour by meaning, and the pattern that tells it apart without colour.</summary>
/// <param name="Colour">Colour of the theme.</param>
/// <param name="Pattern">Pattern by plotly's names; empty for a filled bar.</param>
/// <param name="IsOutlined">Whether only pattern and outline carry the colour: ink that is no flow.</param>
internal sealed record BarMark(string Colour, string Pattern, bool IsOutlined = false)
{
    /// <summary>Totals and cash.</summary>
    internal static BarMark Total(ChartTheme theme) => new(theme.Ink, "");

    internal static BarMark Of(CorrectionKind kind, ChartTheme theme) => kind switch
    {
        // What the counter counted and nobody received, and the plant's own use, are lost energy.
        CorrectionKind.MeasurementPoint or CorrectionKind.Standby => Of(Destination.Lost, theme),
        CorrectionKind.Destination => Of(Destination.Exported, theme),
        CorrectionKind.RunningCosts or CorrectionKind.Replacement => new BarMark(theme.Paid, ""),
        // Prices, tax, ageing and time are no flow: hatched ink.
        _ => new BarMark(theme.Ink, "/", IsOutlined: true),
    };

    internal static BarMark Of(Destination destination, ChartTheme theme) => destination switch
    {
        Destination.UsedDirectly => new BarMark(theme.Used, ""),
        Destination.UsedFromStorage => new BarMark(theme.Stored, "x"),
        Destination.Exported => new BarMark(theme.Exported, "\\"),
        Destination.Lost => new BarMark(theme.Lost, "|"),
        _ => new BarMark(theme.Ink, "/", IsOutlined: true),
    };

    /// <summary>The mark as a marker of plotly. One mark per series: where a series has several colours, plotly replaces a pattern's own.</summary>
    internal Fields Marker(ChartTheme theme, ChartPreset preset)
    {
        var marker = new Fields
        {
            ["color"] = IsOutlined ? theme.Card : Colour,
            ["line"] = new Fields { ["color"] = Colour, ["width"] = IsOutlined ? Math.Round(preset.LinePx * 0.45, 1) : 0 },
        };
        if (Pattern.Length > 0)
        {
            // Outlined bars are drawn in their colour on the card; filled ones carry a thin pattern of the card's colour.
            marker["pattern"] = new Fields
            {
                ["shape"] = Pattern, ["fillmode"] = "replace", ["fgcolor"] = IsOutlined ? Colour : theme.Card, ["bgcolor"] = IsOutlined ? theme.Card : Colour,
                ["size"] = Math.Round(preset.LinePx * 2.6), ["solidity"] = IsOutlined ? 0.3 : 0.15,
            };
        }

        return marker;
    }
}
