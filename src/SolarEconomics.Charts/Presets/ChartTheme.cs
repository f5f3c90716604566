namespace SolarEconomics.Charts;

/// <summary>The colours of a chart, by meaning: one meaning, one colour, on page, chart, report and video.</summary>
/// <remarks>Each colour is <c>#rrggbb</c> in lower case. Used, exported, stored, paid and lost belong to energy and money that flows and to
/// nothing else; cash, text and totals are ink; what is no flow (ageing, prices) is hatched ink. A second cue (pattern, label, order)
/// goes with each colour. Within a theme all colours differ, so that a figure can be recoloured by exchanging them.</remarks>
public sealed record ChartTheme
{
    /// <summary>Dark ink on light paper.</summary>
    public static ChartTheme Light { get; } = new()
    {
        Name = "light", Paper = "#fbf8f1", Card = "#fffdf8", Ink = "#1d2326", Soft = "#5b6468", Line = "#e4ddcd",
        Used = "#0a8fb5", Exported = "#cf7808", Stored = "#3a2aa0", Paid = "#6b1420", Lost = "#978a6d",
    };

    /// <summary>Light ink on dark paper.</summary>
    public static ChartTheme Dark { get; } = new()
    {
        Name = "dark", Paper = "#14181b", Card = "#1b2024", Ink = "#ece8dd", Soft = "#a8b0b3", Line = "#333b40",
        Used = "#3cc7ee", Exported = "#f5a623", Stored = "#736ce6", Paid = "#d63c52", Lost = "#cfcbb0",
    };

    /// <summary>One word: <c>light</c> or <c>dark</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The page behind the cards.</summary>
    public required string Paper { get; init; }

    /// <summary>The card that a chart stands on.</summary>
    public required string Card { get; init; }

    /// <summary>Text, cash and totals.</summary>
    public required string Ink { get; init; }

    /// <summary>Axis text and what is beside the point.</summary>
    public required string Soft { get; init; }

    /// <summary>Thin lines.</summary>
    public required string Line { get; init; }

    /// <summary>Energy used on site.</summary>
    public required string Used { get; init; }

    /// <summary>Energy sent to the grid.</summary>
    public required string Exported { get; init; }

    /// <summary>Energy that went through a battery.</summary>
    public required string Stored { get; init; }

    /// <summary>Money paid.</summary>
    public required string Paid { get; init; }

    /// <summary>Energy lost.</summary>
    public required string Lost { get; init; }

    /// <summary>The colours by token name, in a fixed order.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Tokens =>
    [
        new("paper", Paper), new("card", Card), new("ink", Ink), new("soft", Soft), new("line", Line),
        new("used", Used), new("exported", Exported), new("stored", Stored), new("paid", Paid), new("lost", Lost),
    ];
}
