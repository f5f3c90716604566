using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of the bridge of the outlook.</summary>
internal sealed class OutlookBridgeWords(Outlook outlook, double straightYears, bool isPaidBack, CultureInfo culture) : IBridgeWords
{
    public string Label(CorrectionKind kind) => kind switch
    {
        CorrectionKind.Ageing => "Ageing",
        CorrectionKind.Replacement => "Replacements",
        CorrectionKind.PricePath => "Price path",
        _ => "Time value",
    };

    public string Sentence(CorrectionKind kind, Money part)
    {
        var money = Wording.Signed(part, culture);
        var a = outlook.Assumptions;
        return kind switch
        {
            CorrectionKind.Ageing => $"Modules yield less with age ({a.Ageing}){(a.BatteryFade is { } fade ? $" and the {fade.Part} holds less" : "")}: {money}.",
            CorrectionKind.Replacement => a.Replacements.Count == 0
                ? "No replacement is assumed; an inverter or a battery seldom lasts to the horizon."
                : $"Parts replaced by then ({string.Join(", ", a.Replacements.Select(r => r.Part))}): {money}.",
            CorrectionKind.PricePath =>
                $"The latest prices, growing by {Wording.Percent(a.PriceGrowth, culture)} a year (feed-in {Wording.Percent(a.FeedInGrowth, culture)}, costs {Wording.Percent(a.CostGrowth, culture)}): {money}.",
            _ => $"Money later is worth less: at {Wording.Percent(a.DiscountRate, culture)} a year, {money}.",
        };
    }

    public Finding Finding(Money start, Money end, IReadOnlyList<Correction> corrections)
    {
        var day = isPaidBack
            ? $"on the day that the recorded pace calls paid back, after {Wording.Years(straightYears, culture)}"
            : $"at the horizon, after {Wording.Years(straightYears, culture)}; the recorded pace alone is not paid back by then";
        var figure = end.Amount < 0 ? $"{Wording.Whole(-end, culture)} still open" : $"{Wording.Whole(end, culture)} ahead";
        return new Finding(figure, $"{day}. " + string.Join(" ", corrections.Select(c => c.Sentence)))
        {
            Tables = [BridgeTable.Of("Cash position on that day, one correction after another", start, end, corrections, "Lasting payback", culture)],
            Notes = ["Each correction is the difference of two full recomputations of all years.", "No effect of the value to date stands in this bridge."],
            Cautions = [Cautions.Money],
        };
    }
}
