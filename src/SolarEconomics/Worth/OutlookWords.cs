using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>The words of an outlook, its payback and its curve.</summary>
internal static class OutlookWords
{
    internal static Finding Say(Outlook outlook, double runningPerYear, CultureInfo culture)
    {
        var (irr, owner) = (outlook.Irr, outlook.Owner);
        var rate = irr.End == SolveEnd.Root ? $"a return of {Wording.Percent(irr.Roots[0].PerYear, culture)} a year" : $"no single rate of return ({EndInWords(irr, culture)})";
        var position = outlook.PositionAtHorizon;
        var words = $"net present value at the first purchase, at {Wording.Percent(outlook.Assumptions.DiscountRate, culture)} a year; {rate}; " +
            $"{(position.Amount < 0 ? Wording.Whole(-position, culture) + " still open" : Wording.Whole(position, culture) + " ahead")} after {Wording.Count(outlook.Assumptions.Years, "year", culture)}, undiscounted.";
        return new Finding(Wording.Whole(outlook.Npv, culture), words)
        {
            Tables = owner is null ? [YearTable(outlook, culture)] : [YearTable(outlook, culture), .. owner.Say(culture).Tables],
            Notes = [.. owner is null ? [] : (string[])[OwnerWords.InShort(owner, culture)], .. NotesOf(outlook, runningPerYear, culture)],
            Cautions = [Cautions.Money],
        };
    }

    internal static Finding Payback(Outlook outlook, double? lasting, double? first, double? discounted, LocalDate? date, CultureInfo culture)
    {
        var line = outlook.WorthToDate.StraightLine?.PaybackYears is { } straight
            ? $" The straight line says {Wording.Years(straight, culture)}: it prices every kWh as if it had been bought."
            : "";
        var at = Wording.Percent(outlook.Assumptions.DiscountRate, culture);
        var discountedWords = discounted is { } d ? $" With money at {at} a year: {Wording.Years(d, culture)}." : $" With money at {at} a year: not within {Wording.Count(outlook.Assumptions.Years, "year", culture)}.";
        if (lasting is not { } years)
        {
            return new Finding($"Not within {Wording.Count(outlook.Assumptions.Years, "year", culture)}",
                $"of the first purchase: at the horizon {Wording.Whole(-outlook.PositionAtHorizon, culture)} are still open.{discountedWords}{line}")
            {
                Cautions = [Cautions.Money],
            };
        }
        var early = first is { } f && years - f > 0.05 ? $" A first time after {Wording.Years(f, culture)}, before later costs opened the account again." : "";
        return new Finding(Wording.Years(years, culture), $"after the first purchase, on {Wording.Day(date!.Value, culture)}, and for good from then on.{early}{discountedWords}{line}")
        {
            Notes = ["Undiscounted, in money of the day, all receipts and running costs in."],
            Cautions = [Cautions.Money],
        };
    }

    internal static Finding Curve(Outlook outlook, Payback payback, CultureInfo culture) =>
        payback.Finding with
        {
            Tables = [YearTable(outlook, culture)],
        };

    private static FindingTable YearTable(Outlook outlook, CultureInfo culture) => new(
        $"Flows by year from the first purchase ({outlook.WorthToDate.Site.Currency} of the day)",
        ["Year from", "Investment", "Savings", "Feed-in", "Running", "Replacement", "Income", "Position", "From"],
        [.. outlook.YearsAhead.Select(y => (IReadOnlyList<string>)
        [
            Wording.Day(y.Start, culture), Wording.Whole(y.Investment, culture), Wording.Whole(y.Savings, culture), Wording.Whole(y.FeedIn, culture),
            Wording.Whole(y.Running, culture), Wording.Whole(y.Replacement, culture), Wording.Whole(y.Income, culture),
            Wording.Whole(y.CumulativePosition, culture), y.IsRecorded ? "records" : "outlook",
        ])]);

    private static IEnumerable<string> NotesOf(Outlook outlook, double runningPerYear, CultureInfo culture)
    {
        var a = outlook.Assumptions;
        var currency = outlook.WorthToDate.Site.Currency;
        yield return $"Horizon {Wording.Count(a.Years, "year", culture)} from the first purchase; ageing {a.Ageing}; import price {Wording.Percent(a.PriceGrowth, culture)}, feed-in {Wording.Percent(a.FeedInGrowth, culture)}, costs {Wording.Percent(a.CostGrowth, culture)} a year.";
        yield return $"Running costs {Wording.Whole(Money.Nominal((decimal)runningPerYear, currency), culture)} a year at today's prices" +
            (a.RunningCostsPerYear is null ? ", the mean of the ledger so far." : ", as stated.");
        if (outlook.WorthToDate is { OwnHourRate: { } hour, WithoutOwnHours: { } unpaid })
        {
            // Stated running costs hold own hours only if they were put in, so they stay the same on both sides.
            yield return $"Own hours count at {Wording.Exact(hour, culture)} each{(a.RunningCostsPerYear is null ? ", ahead at their mean so far" : "; those ahead are in the stated running costs if they were put in")}. " +
                $"Without them the net present value is {Wording.Whole(unpaid.Outlook(a).Npv, culture)}.";
        }
        yield return a.Replacements.Count == 0
            ? "No replacement is assumed."
            : "Replacements: " + string.Join("; ", a.Replacements.Select(r => $"{r.Part} after {Wording.Years(r.YearsAfterFirstPurchase, culture)}, {Wording.Whole(Money.Nominal(r.Cost, currency), culture)}")) + ".";
        if (a.BatteryFade is { } fade) yield return BatteryWords(outlook, fade, culture);
        foreach (var part in a.WearingParts)
            yield return $"{part.Part}: replaced as it fails, mean life {Wording.Years(part.Life.Mean, culture)}, {Wording.Whole(Money.Nominal(part.Cost, currency), culture)} each; the expected cost is spread over the years.";
        foreach (var step in a.PriceSteps)
            yield return $"From {Wording.Day(step.From, culture)} import prices {Wording.Percent(step.ImportFactor - 1, culture)} and feed-in {Wording.Percent(step.FeedInFactor - 1, culture)} beside the growth.";
        if (a.FeedInGuarantee is { } guarantee)
            yield return $"The guaranteed feed-in rate ends on {Wording.Day(guarantee.Until, culture)}; after it {Wording.Price(Money.Nominal(guarantee.PricePerKwhAfter, currency), culture)} a kWh at today's prices.";
        if (a.FeedInTaxRate > 0) yield return $"{Wording.Percent(a.FeedInTaxRate, culture)} of what is paid for export goes in tax, as stated.";
        if (a.AvoidedSupplyChargePerYear > 0)
            yield return $"Supply charges of {Wording.Whole(Money.Nominal(a.AvoidedSupplyChargePerYear, currency), culture)} a year are avoided, as stated: the connection is given up.";
        if (a.YieldFactor != 1) yield return $"Future generation {Wording.Percent(a.YieldFactor, culture)} of what the records say.";
        yield return "The future repeats what the records say of each calendar month; generation lost to age is taken from use and export in proportion.";
        if (outlook.WorthToDate.Period.Days < 365) yield return "Less than a year is on record: months without records take the mean of those there are.";
    }

    private static string BatteryWords(Outlook outlook, BatteryFade fade, CultureInfo culture)
    {
        var months = outlook.BatteryMonths;
        var low = months.FirstOrDefault(m => m.ShareOfNew < fade.Ageing.EndOfLifeShare);
        var end = low is null ? "" : $", below {Wording.Percent(fade.Ageing.EndOfLifeShare, culture)} from {Wording.Day(low.Start, culture)}";
        return $"{Wording.Capital(fade.Part)} of {fade.UsableKwh.ToString("0.##", culture)} kWh when new: {Wording.Percent(months[0].ShareOfNew, culture)} of it left after the records, " +
            $"{Wording.Percent(months[^1].ShareOfNew, culture)} at the horizon{end}. In all it delivers {Wording.Kwh(months.Sum(m => m.LostKwh), culture)} less than the records would go on to say; " +
            "what it does not store is exported. A day that did not fill it loses only what no longer fits, the modules' ageing is taken off first, and a new battery saves no more than the records show.";
    }

    internal static string EndInWords(IrrResult result, CultureInfo culture) => result.End switch
    {
        SolveEnd.NoSignChange => "the flows never change sign",
        SolveEnd.NoRealRoot => "no rate brings the flows to 0",
        SolveEnd.SeveralRoots => "several rates bring the flows to 0: " + string.Join(", ", result.Roots.Select(r => Wording.Percent(r.PerYear, culture))),
        SolveEnd.NotConverged => "the search did not settle",
        _ => "one rate",
    };
}
