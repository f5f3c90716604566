namespace SolarEconomics;

/// <summary>A price on top in the called hours of some days.</summary>
internal sealed class SegmentEventCharge(EventCharge part, SegmentContext context) : SegmentPart
{
    private readonly (int First, int End)[] _ranges =
        [.. part.Days.Distinct().Where(context.Days.Contains).SelectMany(d => EventHours.Of(d, part.Hours, context.RateZone, context.Ticks))];

    internal override bool AddFloor(BillFloor floor) => floor.AddByTheHour(this);

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var kwh = run.Of(part.Side);
        if (kwh.IsEmpty) return;
        var quantity = BillWriter.Kwh(EventHours.Sum(kwh, _ranges));
        if (quantity != 0)
            lines.Add(BillWriter.Line(context, part, part.Name, quantity, "kWh", part.PerKwh, part.Side.Sign(), RuleWords.Event(part, quantity, context)));
    }

    internal override void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh)
    {
        if (side != part.Side) return;
        var price = (double)(part.PerKwh * (withTax ? 1 + context.Tariff.TaxOn(part) : 1));
        foreach (var (first, end) in _ranges)
            for (var i = first; i < end; i++) pricePerKwh[i] += price;
    }
}
