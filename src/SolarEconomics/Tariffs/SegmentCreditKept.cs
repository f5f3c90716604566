namespace SolarEconomics;

/// <summary>Lifts a bill below zero to zero, and takes carried credit off a bill above it. It acts once in a billing period, at its last version.</summary>
internal sealed class SegmentCreditKept(CreditKept credit, SegmentContext context) : SegmentPart
{
    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        if (!context.EndsPeriod) return;
        ref var carried = ref run.Carry.Credit(credit.Name);
        if (credit.ExpiresInMonth == context.WholePeriod.Start.Month) carried = 0;
        var tariff = context.Tariff;
        var tax = tariff.Rounding.Line(lines.Sum(l => l.Tax.Amount), tariff.Currency);
        var total = tariff.Rounding.Total(lines.Sum(l => l.Amount.Amount) + tax, tariff.Currency);
        if (total < 0)
        {
            if (credit.IsCarried) carried -= total;
            Add(lines, ", " + (credit.IsCarried ? "kept for later bills" : "not paid out"), -total, 1, RuleWords.CreditKept(credit, -total, carried, tariff));
        }
        else if (Math.Min(total, carried) is > 0 and var used)
        {
            carried -= used;
            Add(lines, ", from earlier bills", used, -1, RuleWords.CreditUsed(used, carried, tariff));
        }
    }

    private void Add(List<BillLine> lines, string what, decimal amount, int sign, string why) =>
        lines.Add(BillWriter.Line(context, credit with { TaxFraction = 0 }, credit.Name + what, 1, "bill", amount, sign, why));
}
