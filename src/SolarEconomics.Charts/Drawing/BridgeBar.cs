using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>One bar of a bridge, from where the one before it ended.</summary>
internal sealed record BridgeBar(string Label, string? Standing, double From, double To, string Amount, string Hover, BarMark Mark)
{
    /// <summary>Whether the amount stands under the bar: below zero, lines and labels above it would be in the way.</summary>
    internal bool IsBelowZero => From <= 0 && To <= 0 && From + To < 0;

    internal static IReadOnlyList<BridgeBar> All(Bridge bridge, BridgeParts parts, ChartTheme theme, CultureInfo culture)
    {
        var money = Style(bridge, culture);
        var bars = new List<BridgeBar> { Total(bridge.StartLabel, bridge.Start, theme, money) };
        var at = bridge.Start;
        foreach (var correction in bridge.Corrections)
        {
            var part = parts == BridgeParts.PrintedOrder ? correction.Part : correction.ShapleyPart;
            var amount = money.Change(part);
            var range = correction.SmallestPart == correction.LargestPart
                ? ""
                : $"<br>{money.Change(correction.SmallestPart)} to {money.Change(correction.LargestPart)}, depending on the order";
            var lines = Sentences.Wrap(correction.Sentence, 60).Select(Sentences.Escape);
            bars.Add(new BridgeBar(
                correction.Label, parts == BridgeParts.PrintedOrder ? correction.Standing : null, (double)at.Amount, (double)(at + part).Amount, amount,
                $"<b>{amount}</b> {Sentences.Escape(correction.Label)}<br>{string.Join("<br>", lines)}{range}", BarMark.Of(correction.Kind, theme)));
            at += part;
        }

        bars.Add(Total(bridge.EndLabel, bridge.End, theme, money));
        return bars;
    }

    internal static MoneyStyle Style(Bridge bridge, CultureInfo culture) =>
        MoneyStyle.For([bridge.Start, bridge.End, .. bridge.Corrections.Select(c => c.Part)], culture);

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

    private static BridgeBar Total(string label, Money amount, ChartTheme theme, MoneyStyle money)
    {
        var text = money.Write(amount);
        return new BridgeBar(label, null, 0, (double)amount.Amount, text, $"<b>{text}</b> {Sentences.Escape(label)}", BarMark.Total(theme));
    }
}
