namespace SolarEconomics;

/// <summary>One energy part over one segment of a plan: a byte per interval says which rate applies.</summary>
/// <remarks>An interval that an edge cuts through is left out of the bytes and shared by time, which is the best that its one number tells.</remarks>
internal sealed partial class SegmentEnergy : SegmentPart
{
    private readonly byte[] _bands;
    private readonly SplitPiece[] _pieces;
    private readonly SegmentContext _context;
    private readonly double[] _ratesWithTax;
    private readonly double _share;

    internal SegmentEnergy(EnergyPart part, SegmentContext context)
    {
        Part = part;
        _context = context;
        var (ticks, clock, table) = (context.Ticks, context.Clock, context.TableOf(part));
        var (from, until) = (context.Second(context.EnergyDays.Start), context.Second(context.EnergyDays.End));
        First = ticks.FirstTouching(from);
        _share = context.EnergyShare;
        _bands = new byte[Math.Max(0, ticks.FirstFrom(until) - First)];
        var cut = (byte)Part.Rates.Count;
        var pieces = new List<SplitPiece>();
        for (var i = 0; i < _bands.Length;)
        {
            var start = ticks.StartOf(First + i);
            clock.MoveTo(Math.Max(start, from));
            var minute = clock.SecondOfDay / 60;
            var runEnd = Math.Min(start + (table.RunEnd(clock.DayClass, minute) * 60L) - clock.SecondOfDay, Math.Min(clock.NextChange, until));
            var whole = start < from ? 0 : (int)((runEnd - start) / ticks.Step);
            if (whole > 0)
            {
                // Intervals up to the next edge all bear the same rate.
                _bands.AsSpan(i, Math.Min(whole, _bands.Length - i)).Fill(table.BandAt(clock.DayClass, minute));
                i += whole;
                continue;
            }
            _bands[i] = cut;
            Cut(First + i, Math.Max(start, from), Math.Min(start + ticks.Step, until), ticks.Step, table, clock, pieces);
            i++;
        }
        _pieces = [.. pieces];
        var factor = Part.QuantityFactor * (1 + context.Tariff.TaxOn(part)) * part.Side.Sign();
        // The last slot belongs to cut intervals, whose pieces follow.
        IsPricedByTheHour = part.QuantityDigits is null && part.MostKw is null && part.Rates.All(r => r.Blocks is null);
        _ratesWithTax = [.. part.Rates.Select(r => (double)(r.PerKwh * factor) * _share), 0.0];
    }

    internal EnergyPart Part { get; }

    /// <summary>The first interval of the segment, in the plan's grid.</summary>
    internal int First { get; }

    internal ReadOnlySpan<byte> Bands => _bands;

    internal ReadOnlySpan<SplitPiece> Pieces => _pieces;

    /// <summary>Adds up energy by rate, in kWh. <paramref name="sums"/> is as long as the part's rates.</summary>
    internal void Sum(ReadOnlySpan<double> kwh, Span<double> sums)
    {
        kwh = Limited(kwh);
        BandSums.Add(kwh.Slice(First, _bands.Length), _bands, sums);
        foreach (var piece in _pieces) sums[piece.Band] += kwh[piece.Interval] * piece.Share;
        if (_share == 1) return;
        for (var i = 0; i < sums.Length; i++) sums[i] *= _share;
    }

    private ReadOnlySpan<double> Limited(ReadOnlySpan<double> kwh)
    {
        if (Part.MostKw is not { } kw) return kwh;
        var most = (double)kw * _context.Ticks.Step / 3600;
        var limited = new double[kwh.Length];
        for (var i = First; i < First + _bands.Length; i++) limited[i] = Math.Min(kwh[i], most);
        return limited;
    }

    internal override bool IsPricedByTheHour { get; }

    internal override double CostWithTax(BillRun run)
    {
        var kwh = run.Of(Part.Side);
        if (kwh.IsEmpty) return 0;
        var own = kwh.Slice(First, _bands.Length);
        // One price for all hours needs no look-up.
        if (Part.Rates.Count == 1 && _pieces.Length == 0) return BandSums.Total(own) * _ratesWithTax[0];
        var cost = BandCosts.Sum(own, _bands, _ratesWithTax);
        foreach (var piece in _pieces) cost += kwh[piece.Interval] * piece.Share * _ratesWithTax[piece.Band];
        return cost;
    }

    internal override void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh)
    {
        if (side == Part.Side) AddPrices(withTax ? 1.0 + (double)_context.Tariff.TaxOn(Part) : 1.0, pricePerKwh);
    }

    /// <summary>Adds the part's price to each interval's, times a factor; of the first block where there are blocks.</summary>
    internal void AddPrices(double factor, double[] pricePerKwh)
    {
        // The last slot belongs to cut intervals, whose pieces follow.
        double[] rates = [.. Part.Rates.Select(r => (double)(r.PerKwh * Part.QuantityFactor) * factor * _share), 0.0];
        for (var i = 0; i < _bands.Length; i++) pricePerKwh[First + i] += rates[_bands[i]];
        foreach (var piece in _pieces) pricePerKwh[piece.Interval] += rates[piece.Band] * piece.Share;
    }

    private static void Cut(int interval, long from, long until, long step, BandTable table, IntervalClock clock, List<SplitPiece> pieces)
    {
        for (var at = from; at < until;)
        {
            clock.MoveTo(at);
            var runEnd = at + (table.RunEnd(clock.DayClass, clock.SecondOfDay / 60) * 60L) - clock.SecondOfDay;
            var next = Math.Min(until, Math.Min(clock.NextChange, runEnd));
            pieces.Add(new SplitPiece(interval, table.BandAt(clock.DayClass, clock.SecondOfDay / 60), (double)(next - at) / step));
            at = next;
        }
    }
}
