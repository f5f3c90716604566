namespace SolarEconomics;

/// <summary>The mix of patterns that meets every sum and is worth most: prices are set on the sums, each block is laid anew at them, and what is worth having joins the mix.</summary>
/// <remarks>
/// Each pattern meets the conditions of every interval, and these are convex, so a mix meets them too; the shares are found so that the sums are met.
/// Laid at any prices, the blocks also say what no flows can exceed. The search ends when the two agree: the mix is then proven to be the end. Source: mix-1.
/// </remarks>
internal sealed class PatternMix
{
    // A millionth of a unit of currency for a whole cluster: far below any rounding of a bill.
    private const double Near = 1e-6;
    private const int MostRounds = 3000;

    private readonly EndsProgram _program;
    private readonly PatternLaying _laying;
    private readonly double _fine;

    internal PatternMix(EndsProgram program, bool lowEnd)
    {
        _program = program;
        _laying = new PatternLaying(program, lowEnd);
        var dearest = 0.0;
        for (var i = 0; i < program.Prices.Import.Length; i++)
            dearest = Math.Max(dearest, Math.Max(Math.Abs(program.Prices.Import[i]), Math.Abs(program.Prices.Export[i])));
        // Dearer than any chain of changes, so that a sum is missed only where nothing can meet it.
        _fine = 1000 * (dearest + 0.01);
    }

    /// <summary>The flows of each block, by how many kWh sums had to be missed, and what more other flows might be worth: next to nothing unless the search was cut short.</summary>
    internal MixedFlows Solve()
    {
        var patterns = new Pattern[_program.Blocks.Count];
        var found = new (double MissedKwh, double Doubt)[_program.Blocks.Count];
        var clusters = Clusters();
        Parallel.For(0, clusters.Count, c => found[c] = Solve(clusters[c], patterns));
        return new MixedFlows(patterns, found.Take(clusters.Count).Sum(f => f.MissedKwh), found.Take(clusters.Count).Sum(f => f.Doubt));
    }

    private (double MissedKwh, double Doubt) Solve(List<int> blocks, Pattern[] mixed)
    {
        var sums = blocks.SelectMany(_laying.SumsOf).Distinct().Order().ToArray();
        var price = new double[_program.Sums.Count];
        if (sums.Length == 0)
        {
            foreach (var b in blocks) mixed[b] = _laying.Lay(b, price);
            return (0, 0);
        }
        var basis = new PatternBasis([.. sums.Select(s => _program.Sums[s].LowKwh)], _fine, [.. blocks.Select(b => _laying.Lay(b, price))], sums);
        var doubt = double.PositiveInfinity;
        for (var round = 0; round < MostRounds && doubt > Near; round++)
        {
            basis.PricesInto(price);
            var laid = new Pattern[blocks.Count];
            var gain = 0.0;
            for (var b = 0; b < blocks.Count; b++)
            {
                laid[b] = _laying.Lay(blocks[b], price);
                gain += Math.Max(0, basis.GainOf(laid[b], b));
            }
            doubt = Math.Min(doubt, gain);
            if (doubt <= Near) break;
            // Each that still gains after those before it have changed the prices.
            for (var b = 0; b < blocks.Count; b++) if (basis.GainOf(laid[b], b) > Near / (2 * blocks.Count)) basis.Enter(laid[b], b);
        }
        for (var b = 0; b < blocks.Count; b++) mixed[blocks[b]] = basis.Mix(b);
        return (basis.MissedKwh, Math.Max(0, doubt));
    }

    /// <summary>Blocks that share a sum belong together; all others are found on their own.</summary>
    private List<List<int>> Clusters()
    {
        var clusterOf = Enumerable.Range(0, _program.Blocks.Count).ToArray();
        int Root(int b)
        {
            while (clusterOf[b] != b) b = clusterOf[b];
            return b;
        }
        var first = new Dictionary<int, int>();
        for (var b = 0; b < _program.Blocks.Count; b++)
            foreach (var sum in _laying.SumsOf(b))
                if (!first.TryAdd(sum, b)) clusterOf[Root(b)] = Root(first[sum]);
        return [.. Enumerable.Range(0, _program.Blocks.Count).GroupBy(Root).Select(g => g.ToList())];
    }
}
