namespace SolarEconomics;

/// <content>Writing the lines of an energy part.</content>
internal sealed partial class SegmentEnergy
{
    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var kwh = run.Of(Part.Side);
        if (kwh.IsEmpty) return;
        kwh = Limited(kwh);
        Span<double> sums = stackalloc double[Part.Rates.Count];
        sums.Clear();
        Sum(kwh, sums);
        for (var i = 0; i < sums.Length; i++)
        {
            if (sums[i] == 0) continue;
            var rate = Part.Rates[i];
            if (rate.Blocks is null) AddLine(rate, rate.Name, Quantity(sums[i]), rate.PerKwh, lines);
            else AddBlocks(rate, rate.Blocks, sums[i], kwh, (byte)i, run.Carry, lines);
        }
    }

    private void AddLine(EnergyRate rate, string name, decimal quantity, decimal perKwh, List<BillLine> lines) =>
        lines.Add(BillWriter.Line(_context, Part, name, quantity, "kWh", perKwh, Part.Side.Sign(),
            RuleWords.Energy(Part, rate, quantity, perKwh, _context.Tariff)));

    private void AddBlocks(EnergyRate rate, RateBlocks blocks, double totalKwh, ReadOnlySpan<double> kwh, byte band, BillCarry carry, List<BillLine> lines)
    {
        Span<decimal> inBlocks = stackalloc decimal[blocks.Steps.Count];
        inBlocks.Clear();
        if (blocks.RunsOn) ShareRunningOn(rate, blocks, kwh, band, carry, inBlocks);
        else ShareOfBill(blocks, totalKwh, kwh, band, inBlocks);
        for (var i = 0; i < inBlocks.Length; i++)
            if (inBlocks[i] != 0) AddLine(rate, RuleWords.Block(rate, blocks, i), inBlocks[i], blocks.Steps[i].PerKwh, lines);
    }

    private void ShareOfBill(RateBlocks blocks, double totalKwh, ReadOnlySpan<double> kwh, byte band, Span<decimal> inBlocks)
    {
        var stretches = BlockScale.Stretches(blocks.Per, _context.Days, _context.WholePeriod);
        if (stretches.Count == 1) blocks.Share(Quantity(totalKwh), BlockScale.Of(blocks, _context.Days, _context), inBlocks);
        else ShareByStretch(blocks, stretches, kwh, band, inBlocks);
    }

    private void ShareByStretch(RateBlocks blocks, IReadOnlyList<DateSpan> stretches, ReadOnlySpan<double> kwh, byte band, Span<decimal> inBlocks)
    {
        var at = First;
        foreach (var stretch in stretches)
            blocks.Share(KwhOf(stretch, kwh, band, ref at), BlockScale.Of(blocks, stretch, _context), inBlocks);
    }

    /// <summary>Blocks of their full size, begun where the bill before left off.</summary>
    private void ShareRunningOn(EnergyRate rate, RateBlocks blocks, ReadOnlySpan<double> kwh, byte band, BillCarry carry, Span<decimal> inBlocks)
    {
        ref var counted = ref carry.Counted(Part.Name + "/" + rate.Name);
        Span<decimal> before = stackalloc decimal[inBlocks.Length];
        var at = First;
        foreach (var stretch in BlockScale.Turns(blocks.Per, _context.Days))
        {
            var turn = BlockScale.TurnOf(blocks.Per, stretch.Start);
            if (counted.Turn != turn) counted = (turn, 0);
            before.Clear();
            blocks.Share(counted.Kwh, 1, before);
            counted.Kwh += KwhOf(stretch, kwh, band, ref at);
            blocks.Share(counted.Kwh, 1, inBlocks);
            for (var i = 0; i < before.Length; i++) inBlocks[i] -= before[i];
        }
    }

    /// <summary>Energy at one rate over some days; <paramref name="at"/> moves on to the interval after them.</summary>
    private decimal KwhOf(DateSpan days, ReadOnlySpan<double> kwh, byte band, ref int at)
    {
        // Split by days, each of them has the same part of the bill's energy at this rate.
        if (_share != 1) return Quantity(KwhAt(band, kwh, First, First + _bands.Length) * days.Days / _context.EnergyDays.Days);
        var from = at;
        at = Math.Min(_context.Ticks.FirstFrom(_context.Second(days.End)), First + _bands.Length);
        return Quantity(KwhAt(band, kwh, from, at));
    }

    private double KwhAt(byte band, ReadOnlySpan<double> kwh, int from, int end)
    {
        var sum = 0.0;
        for (var i = from; i < end; i++)
            if (_bands[i - First] == band) sum += kwh[i];
        foreach (var piece in _pieces)
            if (piece.Band == band && piece.Interval >= from && piece.Interval < end) sum += kwh[piece.Interval] * piece.Share;
        return sum;
    }

    /// <summary>Metered kWh as the part prices them.</summary>
    private decimal Quantity(double kwh)
    {
        var quantity = BillWriter.Kwh(kwh) * Part.QuantityFactor;
        return Part.QuantityDigits is { } digits ? Math.Round(quantity, digits, MidpointRounding.AwayFromZero) : quantity;
    }
}
