namespace SolarEconomics;

/// <summary>Lays a block of intervals at given prices of the sums: with one price λ for a month's export, a kWh made is worth max(import price, feed-in + λ).</summary>
internal sealed class PatternLaying
{
    // A little dearer than nothing, so that no more is imported than the conditions ask.
    private const double Reluctance = 1e-12;

    private readonly EndsProgram _program;
    private readonly double _sign;
    private readonly int[][] _sumsOf;
    private readonly int[][] _firstSumsOf;
    private readonly (Pattern Settled, int[] Open)[] _settled;

    /// <param name="program">What is open.</param>
    /// <param name="lowEnd">Whether the lowest worth is sought instead of the highest.</param>
    internal PatternLaying(EndsProgram program, bool lowEnd)
    {
        _program = program;
        _sign = lowEnd ? -1 : 1;
        _sumsOf = [.. program.Blocks.Select(SumsIn)];
        var seen = new HashSet<int>();
        _firstSumsOf = [.. _sumsOf.Select(sums => sums.Where(seen.Add).ToArray())];
        _settled = [.. program.Blocks.Select(Settle)];
    }

    /// <summary>The sums that a block has a part in, ascending.</summary>
    internal IReadOnlyList<int> SumsOf(int block) => _sumsOf[block];

    /// <summary>The pattern of a block that is worth most, sums at their prices included; its worth is told without them.</summary>
    /// <param name="block">Number of the block.</param>
    /// <param name="price">What a kWh in each sum is worth besides. Unit: currency per kWh.</param>
    internal Pattern Lay(int block, double[] price)
    {
        var (settled, open) = _settled[block];
        var pattern = settled.Copy();
        Lay(pattern, open, price);
        foreach (var sum in _firstSumsOf[block])
        {
            // A sum may lie anywhere in its range: what it has above its lowest is taken off here, once for each sum.
            var (low, high) = _program.Sums[sum];
            if (price[sum] < 0) pattern.InSums[sum] -= high - low;
        }
        return pattern;
    }

    /// <summary>Intervals that count in no sum are the same at any price: they are laid once.</summary>
    private (Pattern Settled, int[] Open) Settle((int From, int To) block)
    {
        var settled = new Pattern(block.From, block.To, _program.Generation.Count) { InSums = new double[_program.Sums.Count] };
        var isOpen = Enumerable.Range(block.From, block.To - block.From).ToLookup(i => Flows().Any(f => f.SumOf[i] >= 0));
        Lay(settled, [.. isOpen[false]], settled.InSums);
        return (settled, [.. isOpen[true]]);
    }

    private IEnumerable<OpenFlow> Flows() => [_program.Export, _program.Import, _program.Charge, _program.Discharge, .. _program.Generation.Select(g => g.Flow)];

    private void Lay(Pattern pattern, int[] intervals, double[] price)
    {
        var laying = new IntervalLaying(_program.Generation.Count);
        var sums = pattern.InSums;
        double PriceOf(OpenFlow flow, int i) => flow.SumOf[i] is var sum and >= 0 ? price[sum] : 0;
        void Count(OpenFlow flow, int i, double kwh)
        {
            if (flow.SumOf[i] is var sum and >= 0) sums[sum] += kwh;
        }
        var (x, m, c, d) = (_program.Export, _program.Import, _program.Charge, _program.Discharge);
        foreach (var i in intervals)
        {
            var (import, export) = (_sign * _program.Prices.Import[i], _sign * _program.Prices.Export[i]);
            laying.SetExport(x.LowKwh[i], x.HighKwh[i], export - import + PriceOf(x, i));
            laying.SetCharge(c.LowKwh[i], c.HighKwh[i], PriceOf(c, i) - import);
            laying.SetDischarge(d.LowKwh[i], d.HighKwh[i], import + PriceOf(d, i));
            laying.SetImport(m.LowKwh[i], m.HighKwh[i], PriceOf(m, i) - Reluctance);
            for (var k = 0; k < _program.Generation.Count; k++) SetParts(laying, k, i, import, PriceOf(_program.Generation[k].Flow, i));
            laying.Lay(_program.StandbyKwh[i]);
            var n = i - pattern.From;
            (pattern.Export[n], pattern.Import[n], pattern.Charge[n], pattern.Discharge[n]) = (laying.ExportKwh, laying.ImportKwh, laying.ChargeKwh, laying.DischargeKwh);
            Count(x, i, laying.ExportKwh);
            Count(m, i, laying.ImportKwh);
            Count(c, i, laying.ChargeKwh);
            Count(d, i, laying.DischargeKwh);
            var made = 0.0;
            for (var k = 0; k < _program.Generation.Count; k++)
            {
                var place = _program.Generation[k];
                pattern.Generation[k][n] = laying.PartKwh(k, 0) + laying.PartKwh(k, 1);
                made += pattern.Generation[k][n];
                Count(place.Flow, i, CountedKwh(laying, k, i, PriceOf(place.Flow, i)));
            }
            pattern.Worth += (import * (made - laying.ExportKwh - laying.ChargeKwh + laying.DischargeKwh)) + (export * laying.ExportKwh);
        }
    }

    private int[] SumsIn((int From, int To) block)
    {
        var sums = new SortedSet<int>();
        foreach (var flow in Flows())
            for (var i = block.From; i < block.To; i++) if (flow.SumOf[i] >= 0) sums.Add(flow.SumOf[i]);
        return [.. sums];
    }

    /// <summary>A place's generation at the board in two parts, the dearer first: where its counted kWh are worth having, each is counted at the lowest efficiency
    /// before the efficiency rises; where they cost, at the highest.</summary>
    private void SetParts(IntervalLaying laying, int k, int i, double import, double price)
    {
        var place = _program.Generation[k];
        var (low, high) = (place.Flow.LowKwh[i], place.Flow.HighKwh[i]);
        if (price >= 0)
        {
            laying.SetPart(k, 0, place.ToAcLow * low, place.ToAcLow * high, import + (price / place.ToAcLow));
            laying.SetPart(k, 1, 0, (place.ToAcHigh - place.ToAcLow) * high, import);
        }
        else
        {
            laying.SetPart(k, 0, place.ToAcLow * low, place.ToAcHigh * low, import);
            laying.SetPart(k, 1, 0, place.ToAcHigh * (high - low), import + (price / place.ToAcHigh));
        }
    }

    private double CountedKwh(IntervalLaying laying, int k, int i, double price)
    {
        var place = _program.Generation[k];
        return price >= 0 ? laying.PartKwh(k, 0) / place.ToAcLow : place.Flow.LowKwh[i] + (laying.PartKwh(k, 1) / place.ToAcHigh);
    }
}
