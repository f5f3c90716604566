namespace SolarEconomics;

/// <summary>Energy of some days priced by a series: one price per interval, worked out once.</summary>
internal sealed class SegmentSeries : SegmentPart
{
    private readonly SeriesPrice _part;
    private readonly SegmentContext _context;
    private readonly int _first;
    private readonly double[] _perKwh;

    internal SegmentSeries(SeriesPrice part, SegmentContext context)
    {
        (_part, _context) = (part, context);
        var ticks = context.Ticks;
        _first = ticks.FirstFrom(context.From);
        _perKwh = new double[ticks.FirstFrom(context.Until) - _first];
        for (var i = 0; i < _perKwh.Length; i++)
            _perKwh[i] = part.PerKwh(part.Prices.Mean(ticks.StartOf(_first + i), ticks.StartOf(_first + i) + ticks.Step));
    }

    internal override bool IsPricedByTheHour => true;

    internal override double CostWithTax(BillRun run)
    {
        var kwh = run.Of(_part.Side);
        return kwh.IsEmpty ? 0 : _part.Side.Sign() * CellSums.Dot(kwh.Slice(_first, _perKwh.Length), _perKwh) * (1 + (double)_context.Tariff.TaxOn(_part));
    }

    internal override void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh)
    {
        if (side != _part.Side) return;
        var factor = withTax ? 1 + (double)_context.Tariff.TaxOn(_part) : 1;
        for (var i = 0; i < _perKwh.Length; i++) pricePerKwh[_first + i] += _perKwh[i] * factor;
    }

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var all = run.Of(_part.Side);
        if (all.IsEmpty) return;
        var kwh = all.Slice(_first, _perKwh.Length);
        var quantity = BillWriter.Kwh(BandSums.Total(kwh));
        if (quantity == 0) return;
        var amount = BillWriter.Kwh(CellSums.Dot(kwh, _perKwh));
        var mean = Math.Round(amount / quantity, 6);
        lines.Add(BillWriter.Amount(_context, _part, _part.Name, quantity, "kWh", mean, _part.Side.Sign() * amount, RuleWords.Series(_part, quantity, mean, _context.Tariff)));
    }
}
