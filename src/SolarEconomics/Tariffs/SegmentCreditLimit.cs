namespace SolarEconomics;

/// <summary>Takes back the credit of some days that lies above a limit.</summary>
internal sealed class SegmentCreditLimit(CreditLimit limit, SegmentContext context) : SegmentPart
{
    private readonly decimal _most = limit.Amount * BlockScale.Of(limit.Per, context.Days, context.WholePeriod);

    // Its line only ever adds to the bill: without it the floor still holds.
    internal override bool AddFloor(BillFloor floor) => true;

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var credit = 0m;
        foreach (var line in lines)
            if (line.Days == context.Days && line.Amount.Amount < 0 && (limit.Of.Count == 0 || limit.Of.Contains(line.Source, StringComparer.Ordinal))) credit -= line.Amount.Amount;
        if (credit > _most)
            lines.Add(BillWriter.Line(context, limit with { TaxFraction = limit.TaxFraction ?? 0 }, limit.Name, 1, "bill", credit - _most, 1, RuleWords.CreditLimit(credit, _most, context.Tariff)));
    }
}
