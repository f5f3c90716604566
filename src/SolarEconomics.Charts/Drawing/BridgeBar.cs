using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>One bar of a bridge, from where the one before it ended.</summary>
internal sealed record BridgeBar(string Label, string? Standing, double From, double To, string Amount, string Hover, BarMark Mark)
{
    /// <summary>Whether the amount stands under the bar: below zero, lines and labels above it would be in the way.</summary>
    internal bool IsBelowZero => From <= 0 && To <= 0 && From + To < 0;

    internal static IReadOnlyList<BridgeBar> All(Bridge bridge, BridgeParts parts, ChartTheme theme, CultureInfo culture)
    {
        var bars = new List<BridgeBar> { Total(bridge.StartLabel, bridge.Start, theme, culture) };
        var at = bridge.Start;
        foreach (var correction in bridge.Corrections)
        {
            var part = parts == BridgeParts.PrintedOrder ? correction.Part : correction.ShapleyPart;
            var amount = PeopleNumber.Change(part, culture);
            var range = correction.SmallestPart == correction.LargestPart
                ? ""
                : $"<br>{PeopleNumber.Change(correction.SmallestPart, culture)} to {PeopleNumber.Change(correction.LargestPart, culture)}, depending on the order";
            var lines = Sentences.Wrap(correction.Sentence, 60).Select(Sentences.Escape);
            bars.Add(new BridgeBar(
                correction.Label, parts == BridgeParts.PrintedOrder ? correction.Standing : null, (double)at.Amount, (double)(at + part).Amount, amount,
                $"<b>{amount}</b> {Sentences.Escape(correction.Label)}<br>{string.Join("<br>", lines)}{range}", BarMark.Of(correction.Kind, theme)));
            at += part;
        }

        bars.Add(Total(bridge.EndLabel, bridge.End, theme, culture));
        return bars;
    }

    /// <summary>The label under the bar and, smaller in rank, what the result stands at, in lines that fit the bar's place.</summary>
    internal IReadOnlyList<string> LinesFor(int charactersPerLine)
    {
        var lines = Sentences.Wrap(Label, charactersPerLine).Select(Sentences.Escape).ToList();
        if (Standing is { Length: > 0 } standing)
        {
            lines.AddRange(Sentences.Wrap(standing, charactersPerLine).Select(l => "<i>" + Sentences.Escape(l) + "</i>"));
        }

        return lines;
    }

    private static BridgeBar Total(string label, Money amount, ChartTheme theme, CultureInfo culture)
    {
        var text = PeopleNumber.Money(amount, culture);
        return new BridgeBar(label, null, 0, (double)amount.Amount, text, $"<b>{text}</b> {Sentences.Escape(label)}", BarMark.Total(theme));
    }
}
