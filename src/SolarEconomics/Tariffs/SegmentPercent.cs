namespace SolarEconomics;

/// <summary>A share of the lines written before it for the same days.</summary>
internal sealed class SegmentPercent(PercentCharge charge, SegmentContext context) : SegmentPart
{
    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var sum = 0m;
        foreach (var line in lines)
        {
            var taken = charge.Of.Count == 0 ? line.Amount.Amount > 0 : charge.Of.Contains(line.Source, StringComparer.Ordinal);
            if (taken && line.Days == context.Days) sum += line.Amount.Amount;
        }
        if (sum == 0) return;
        lines.Add(BillWriter.Line(context, charge, charge.Name, sum, context.Tariff.Currency.Code, charge.Fraction, 1,
            RuleWords.Percent(charge, sum, context.Tariff)));
    }
}
