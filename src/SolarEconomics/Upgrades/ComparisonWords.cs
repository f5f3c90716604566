using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of a comparison of options.</summary>
internal static class ComparisonWords
{
    internal static Finding Say(UpgradeComparison c, CultureInfo culture)
    {
        var best = c.Ranked[0];
        var words = c.DoNothingIsBest
            ? $"is best: the nearest, {best.Option.Name}, is worth {Wording.Signed(best.Npv, culture)} beside it."
            : $"is best: worth {Wording.Signed(best.Npv, culture)} beside doing nothing{Second(c, culture)}.";
        if (best.FlipPrice is { } flip)
        {
            words += c.DoNothingIsBest
                ? $" It would be worth doing below a price of {Wording.Whole(flip, culture)}."
                : $" It stays the best up to a price of {Wording.Whole(flip, culture)}.";
        }
        return new Finding(c.DoNothingIsBest ? "Doing nothing" : Wording.Capital(best.Option.Name), string.Join(" ", c.Flips.Prepend(words)))
        {
            Tables = [Table(c, culture)],
            Notes =
            [
                "Each option is the difference from doing nothing: money already spent is left out. All are valued at the end of the records, over one horizon.",
                "Ranked by net present value. Savings-to-investment ratio and payback stand beside it: they say how much per unit spent and how fast, not how much. Payback counts from each option's own day.",
                "Waiting compares two fixed plans; what deciding again later is worth is not in it.",
            ],
            Cautions = [Cautions.Panels, Cautions.Money],
        };
    }

    /// <summary>A sentence for each measure that puts another option first.</summary>
    internal static IEnumerable<string> Flips(IReadOnlyList<OptionResult> ranked, CultureInfo culture)
    {
        if (ranked.Count < 2) yield break;
        var best = ranked[0];
        var bySir = ranked.Where(r => r.Sir is not null).MaxBy(r => r.Sir);
        if (bySir is not null && bySir != best && best.Sir is { } ratio)
        {
            yield return $"Per unit invested {bySir.Option.Name} brings more ({bySir.Sir!.Value.ToString("0.00", culture)} against {ratio.ToString("0.00", culture)}), " +
                $"but it invests {Wording.Whole(bySir.Invested, culture)} instead of {Wording.Whole(best.Invested, culture)} and leaves {Wording.Whole(best.Npv - bySir.Npv, culture)} less.";
        }
        var byPayback = ranked.Where(r => r.PaybackYears is not null).MinBy(r => r.PaybackYears);
        if (byPayback is not null && byPayback != best)
        {
            var slow = best.PaybackYears is { } years ? Wording.Years(years, culture) : "not within the horizon";
            yield return $"{Wording.Capital(byPayback.Option.Name)} pays back sooner ({Wording.Years(byPayback.PaybackYears!.Value, culture)} against {slow}): payback does not count what comes after it, which is where {best.Option.Name} earns its {Wording.Whole(best.Npv - byPayback.Npv, culture)} more.";
        }
    }

    private static string Second(UpgradeComparison c, CultureInfo culture)
    {
        if (c.Ranked.Count < 2 || c.Ranked[1].Npv.Amount < 0) return "";
        return $", {Wording.Whole(c.Ranked[0].Npv - c.Ranked[1].Npv, culture)} more than {c.Ranked[1].Option.Name}";
    }

    private static FindingTable Table(UpgradeComparison c, CultureInfo culture)
    {
        string Price(Money? price) => price is { } p ? Wording.Whole(p, culture) : "none";
        return new FindingTable($"Options beside doing nothing ({c.Ranked[0].Npv.Currency})",
            ["Option", "Price", "Net present value", "A year", "Savings per unit invested", "Payback", "Worth its price up to", "Choice changes at", "With its loan"],
            [.. c.Ranked.Select(r => (IReadOnlyList<string>)
            [
                r.Option.Name, Wording.Whole(r.Npv with { Amount = r.Option.Price }, culture), Wording.Signed(r.Npv, culture), Wording.Signed(r.YearlyWorth, culture),
                r.Sir is { } sir ? sir.ToString("0.00", culture) : "nothing invested",
                r.PaybackYears is { } years ? Wording.Years(years, culture) : r.Invested.Amount == 0 && r.Npv.Amount >= 0 ? "at once" : "not within the horizon",
                Price(r.BreakEvenPrice), Price(r.FlipPrice), r.OwnerNpv is { } owner ? Wording.Signed(owner, culture) : "",
            ])]);
    }
}
