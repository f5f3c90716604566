using System.Globalization;

namespace SolarEconomics;

public sealed partial class WorthToDate
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var days = Wording.Days(Period, culture);
        if (Value is not { } value)
        {
            return new Finding($"at least {Wording.Whole(Range.Low, culture)}",
                $"from {days}; the records cannot tell more: nothing says how much was generated, so what was used on site is unknown. " + Advice(culture))
            {
                Notes = Notes,
                Cautions = [Cautions.Money, Cautions.Records],
            };
        }
        var words = $"from {days}, between {Wording.Whole(Range.Low, culture)} and {Wording.Whole(Range.High!.Value, culture)} as the records allow";
        words += RunningCosts.Amount == 0 ? "." : $"; {Wording.Whole(value - RunningCosts, culture)} after running costs of {Wording.Whole(RunningCosts, culture)}.";
        if (StraightLine is { } line)
            words += $" Counters times one price say {Wording.Whole(line.Value, culture)}.";
        if (CashSoFar is { } cash)
            words += $" All receipts in, {(cash.Total.Amount < 0 ? Wording.Whole(-cash.Total, culture) + " are still open" : Wording.Whole(cash.Total, culture) + " are ahead")}.";
        words += " " + Advice(culture);
        return new Finding(Wording.Whole(value, culture), words.TrimEnd())
        {
            Notes = Notes,
            Cautions = [Cautions.Money, Cautions.Records],
            Tables = [EnergyTable(culture), .. CashTable(culture), LadderTable(culture), .. NarrowingTable(culture)],
        };
    }

    private string Advice(CultureInfo culture) => Narrowing.Count == 0
        ? "No further record would narrow it."
        : $"What would narrow it most: {Narrowing[0].Record}" + (Narrowing[0].Narrower is { } by ? $" (by {Wording.Whole(by, culture)})." : ".");

    private FindingTable EnergyTable(CultureInfo culture)
    {
        IReadOnlyList<string> Row(string what, double kwh) =>
            [what, Wording.Kwh(kwh, culture), Energy.GeneratedKwh > 0 ? Wording.Percent(kwh / Energy.GeneratedKwh, culture) : ""];
        return new FindingTable("Where the generation went", ["Destination", "Energy", "Share"],
        [
            Row("Used on site at once", Energy.UsedDirectlyKwh),
            Row("Used on site from the battery", Energy.UsedFromStorageKwh),
            Row("Exported", Energy.ExportedKwh),
            Row("Lost in storage, conversion and standby", Energy.LostKwh),
            Row("All generation at the board", Energy.GeneratedKwh),
            ["Curtailed", Energy.CensoredHours > 0 ? $"unknown, in {Energy.CensoredHours.ToString("#,0", culture)} hours" : "none on record", ""],
        ]);
    }

    private IEnumerable<FindingTable> CashTable(CultureInfo culture)
    {
        if (Ledger is null || CashSoFar is not { } cash || Value is not { } value) yield break;
        var ledger = Ledger.Before(Period.End);
        Money Sum(LedgerClass kind) => Money.Nominal(ledger.Of(kind).Sum(e => e.CashFlow.Amount), Site.Currency);
        List<IReadOnlyList<string>> rows =
        [
            ["Purchases less grants", Wording.Whole(Sum(LedgerClass.Investment), culture)],
            ["Running, repairs, insurance", Wording.Whole(Sum(LedgerClass.Running), culture)],
            ["Sales and other income", Wording.Whole(Sum(LedgerClass.Income), culture)],
            ["Value of the energy", Wording.Whole(value, culture)],
            ["Cash so far", Wording.Whole(cash.Total, culture)],
            ["Rate of return so far, as if the plant were worth nothing today", RateInWords(XirrSoFar!, culture)],
        ];
        if (WithoutOwnHours is { XirrSoFar: { } unpaid } && OwnHourRate is { } rate)
            rows.Add([$"The same without own hours, counted here at {Wording.Exact(rate, culture)} each", RateInWords(unpaid, culture)]);
        if (XirrWithResale is { } resale)
            rows.Add([$"Rate of return so far, sold today for {Wording.Whole(Options.ResaleToday!.Value, culture)}", RateInWords(resale, culture)]);
        yield return new FindingTable($"Cash from the first purchase to {Wording.Day(Period.End.PlusDays(-1), culture)} ({Site.Currency})", ["What", "Amount"], rows);
    }

    private static string RateInWords(IrrResult result, CultureInfo culture) => result.End == SolveEnd.Root
        ? Wording.Percent(result.Roots[0].PerYear, culture) + " a year"
        : $"none: {OutlookWords.EndInWords(result, culture)}";

    private FindingTable LadderTable(CultureInfo culture) => new(
        $"What the records allow ({Site.Currency})", ["Records used", "Lowest", "Highest", "Ends"],
        [.. Ladder.Select(step => (IReadOnlyList<string>)
            [step.Words, Wording.Whole(step.Range.Low, culture), step.Range.High is { } high ? Wording.Whole(high, culture) : "cannot tell", step.IsAttained ? "flows" : "bounds"])]);

    private IEnumerable<FindingTable> NarrowingTable(CultureInfo culture)
    {
        if (Narrowing.Count == 0) yield break;
        yield return new FindingTable($"What would narrow it ({Site.Currency})", ["Further record", "Narrower by"],
            [.. Narrowing.Select(n => (IReadOnlyList<string>)[n.Record, n.Narrower is { } by ? Wording.Whole(by, culture) : "a first upper end"])]);
    }
}
