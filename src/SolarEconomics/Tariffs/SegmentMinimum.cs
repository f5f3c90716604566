namespace SolarEconomics;

/// <summary>Tops the charges of some days up to a minimum.</summary>
internal sealed class SegmentMinimum(MinimumBill minimum, SegmentContext context) : SegmentPart
{
    private readonly decimal _least = minimum.Amount * BlockScale.Of(minimum.Per, context.Days, context.WholePeriod);

    // Its line only ever adds to the bill: without it the floor still holds.
    internal override bool AddFloor(BillFloor floor) => true;

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var charges = 0m;
        foreach (var line in lines)
            if (line.Days == context.Days && line.Amount.Amount > 0) charges += line.Amount.Amount;
        if (charges >= _least) return;
        lines.Add(BillWriter.Line(context, minimum, minimum.Name, 1, "bill", _least - charges, 1, RuleWords.Minimum(_least, charges, context.Tariff)));
    }
}
