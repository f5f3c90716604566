namespace SolarEconomics;

/// <content>The least that its kWh can cost, for a linear program.</content>
internal sealed partial class SegmentEnergy
{
    internal override bool AddFloor(BillFloor floor)
    {
        // A run of the flow model meters nothing on the other sides, so that they write no line.
        if (Part.Side is not (EnergySide.Import or EnergySide.Export)) return true;
        // A version that changes in mid-bill and takes its share of the whole bill's energy ties intervals of other days to its prices.
        if (_context.EnergyDays != _context.Days) return false;
        var withTax = 1 + (double)_context.Tariff.TaxOn(Part);
        var perKwh = new double[Part.Rates.Count];
        for (var band = 0; band < perKwh.Length; band++)
        {
            var rate = Part.Rates[band];
            var steps = StepsOf(rate);
            var isExact = Part.MostKw is null && rate.Blocks is not { RunsOn: true } && steps.Zip(steps.Skip(1)).All(s => IsWorse(s.Second - s.First));
            perKwh[band] = isExact ? steps[0] : Best(steps);
            if (isExact && rate.Blocks is { } blocks) AddBlocks(floor, blocks, (byte)band, steps, withTax);
            floor.AddLines(steps.Length);
            if (Part.QuantityDigits is { } digits) floor.AddSlack(Math.Pow(10, -digits) * steps.Max(Math.Abs) * withTax * StretchesOf(rate).Count);
        }
        var factor = (double)Part.QuantityFactor * withTax;
        for (var i = 0; i < _bands.Length; i++)
            if (_bands[i] < perKwh.Length) floor.AddPrice(Part.Side, First + i, perKwh[_bands[i]] * factor);
        foreach (var piece in _pieces) floor.AddPrice(Part.Side, piece.Interval, perKwh[piece.Band] * piece.Share * factor);
        return true;
    }

    private static double[] StepsOf(EnergyRate rate) => rate.Blocks is { } blocks ? [.. blocks.Steps.Select(s => (double)s.PerKwh)] : [(double)rate.PerKwh];

    private IReadOnlyList<DateSpan> StretchesOf(EnergyRate rate) =>
        rate.Blocks is { } blocks ? BlockScale.Stretches(blocks.Per, _context.Days, _context.WholePeriod) : [_context.Days];

    private bool IsWorse(double change) => Part.Side.IsCharge() ? change >= 0 : change <= 0;

    /// <summary>The price best for the home. Above a limit of power a kWh costs and pays nothing.</summary>
    private double Best(double[] steps)
    {
        var all = Part.MostKw is null ? steps : [.. steps, 0];
        return Part.Side.IsCharge() ? all.Min() : all.Max();
    }

    private void AddBlocks(BillFloor floor, RateBlocks blocks, byte band, double[] steps, double withTax)
    {
        var stretches = BlockScale.Stretches(blocks.Per, _context.Days, _context.WholePeriod);
        foreach (var stretch in stretches)
        {
            var scale = (double)BlockScale.Of(blocks, stretch, _context);
            var (intervals, factors) = IntervalsOf(stretches.Count == 1 ? null : stretch, band);
            if (intervals.Count == 0) continue;
            for (var k = 1; k < steps.Length; k++)
                if (steps[k] != steps[k - 1])
                    floor.Excesses.Add(new BillExcess(Part.Side, intervals, factors, (double)blocks.Steps[k - 1].UpToKwh!.Value * scale, Math.Abs(steps[k] - steps[k - 1]) * withTax));
        }
    }

    /// <summary>The intervals of a rate, each with its priced share; of some days only, as the bill counts them, or of all.</summary>
    private (List<int> Intervals, List<double> Factors) IntervalsOf(DateSpan? days, byte band)
    {
        var from = days is { } some ? Math.Max(First, _context.Ticks.FirstFrom(_context.Second(some.Start))) : First;
        if (days is { } first && first.Start == _context.Days.Start) from = First;
        var to = days is { } last ? Math.Min(_context.Ticks.FirstFrom(_context.Second(last.End)), First + _bands.Length) : First + _bands.Length;
        var shares = new SortedDictionary<int, double>();
        for (var i = from; i < to; i++)
            if (_bands[i - First] == band) shares[i] = 1;
        foreach (var piece in _pieces)
            if (piece.Band == band && piece.Interval >= from && piece.Interval < to) shares[piece.Interval] = shares.GetValueOrDefault(piece.Interval) + piece.Share;
        return ([.. shares.Keys], [.. shares.Values.Select(share => share * (double)Part.QuantityFactor)]);
    }
}
