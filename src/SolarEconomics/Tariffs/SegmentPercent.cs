namespace SolarEconomics;

/// <summary>A share of the lines written before it for the same days.</summary>
internal sealed class SegmentPercent(PercentCharge charge, SegmentContext context) : SegmentPart
{
    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var sum = SumOf(charge.Of, context, lines);
        if (sum == 0) return;
        lines.Add(BillWriter.Line(context, charge, charge.Name, sum, context.Tariff.Currency.Code, charge.Fraction, 1,
            RuleWords.Percent(charge, sum, context.Tariff)));
    }

    /// <summary>Sum of the lines of some parts; of all charges where none is named.</summary>
    internal static decimal SumOf(IReadOnlyList<string> parts, SegmentContext context, List<BillLine> lines)
    {
        var sum = 0m;
        foreach (var line in lines)
        {
            var taken = parts.Count == 0 ? line.Amount.Amount > 0 : parts.Contains(line.Source, StringComparer.Ordinal);
            if (taken && line.Days == context.Days) sum += line.Amount.Amount;
        }
        return sum;
    }
}
