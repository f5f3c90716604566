using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>The ends of a month's total: by hand, by the closed rule of sorting, and by trying everything. A linear program holds them in the tests of the solvers; no published table is known.</summary>
public class EndsByHandTests
{
    // What the mix promises, and the last digits of sums. Unit: currency.
    private const double Promised = 1e-6 + 1e-9;

    /// <summary>Hours of one month with generation known and export known by its total only.</summary>
    private static EndsProgram Month(double[] import, double[] export, double[] madeKwh, double exportedKwh)
    {
        var program = new EndsProgram(new EvidencePrices(import, export, new int[import.Length]), new double[import.Length]);
        var roof = new OpenGeneration("roof", import.Length, 1, 1);
        program.Generation.Add(roof);
        var sum = program.AddSum(exportedKwh, exportedKwh);
        for (var i = 0; i < import.Length; i++)
        {
            roof.Flow.LowKwh[i] = roof.Flow.HighKwh[i] = program.Export.HighKwh[i] = madeKwh[i];
            program.Export.SumOf[i] = sum;
        }
        return program;
    }

    private static (double Worth, MixedFlows Flows) End(EndsProgram program, bool lowEnd)
    {
        var mixed = new PatternMix(program, lowEnd).Solve();
        var worth = 0.0;
        foreach (var block in mixed.Blocks)
            for (var n = 0; n < block.Count; n++)
                worth += Worth(program, block.From + n, block.Generation.Sum(g => g[n]), block.Export[n], block.Charge[n], block.Discharge[n]);
        return (worth, mixed);
    }

    private static double Worth(EndsProgram program, int i, double made, double export, double charge, double discharge) =>
        (program.Prices.Import[i] * (made - export - charge + discharge)) + (program.Prices.Export[i] * export);

    [Fact]
    public void Three_kWh_exported_of_six_are_worth_between_1_00_and_1_40() // by hand
    {
        // 2 kWh an hour at 0.30, 0.20 and 0.40 are worth 1.80 if all are used. Exporting takes 0.20, 0.10 and 0.30 from a kWh.
        var program = Month([0.30, 0.20, 0.40], [0.10, 0.10, 0.10], [2, 2, 2], 3);
        var (low, lowFlows) = End(program, lowEnd: true);
        var (high, highFlows) = End(program, lowEnd: false);
        Assert.Equal(1.80 - (2 * 0.30) - 0.20, low, 9);
        Assert.Equal(1.80 - (2 * 0.10) - 0.20, high, 9);
        Assert.Equal([1.0, 0, 2], lowFlows.Blocks[0].Export.Select(x => Math.Round(x, 9)));
        Assert.Equal([1.0, 2, 0], highFlows.Blocks[0].Export.Select(x => Math.Round(x, 9)));
    }

    [Fact]
    public void What_was_counted_is_laid_where_a_kWh_used_or_exported_is_worth_most()
    {
        // By hand: 3 kWh made in two hours of room 2, 1 exported. Used at 0.30 or 0.20, exported at 0.05 or 0.25: the dear hour is filled and used, the other kWh is exported.
        var program = Month([0.30, 0.20], [0.05, 0.25], [2, 2], 1);
        var roof = program.Generation[0].Flow;
        var counted = program.AddSum(3, 3);
        (roof.LowKwh[0], roof.LowKwh[1], roof.SumOf[0], roof.SumOf[1]) = (0, 0, counted, counted);
        var (high, flows) = End(program, lowEnd: false);
        Assert.Equal((2 * 0.30) + 0.25, high, 9);
        Assert.Equal([2.0, 1], flows.Blocks[0].Generation[0].Select(x => Math.Round(x, 9)));
        // Lowest: 2 kWh in the cheap hour used at 0.20, the third in the dear hour exported at 0.05.
        Assert.Equal((2 * 0.20) + 0.05, End(program, lowEnd: true).Worth, 9);
    }

    [Fact]
    public void Without_a_battery_sorting_hours_by_what_export_takes_from_a_kWh_finds_the_same_ends() => // naive twin
        Gen.Select(Gen.Double[0, 0.5].Array[12], Gen.Double[-0.1, 0.4].Array[12], Gen.Double[0, 3].Array[12], Gen.Double[0, 1]).Sample((import, export, made, share) =>
        {
            var program = Month(import, export, made, share * made.Sum());
            foreach (var lowEnd in (bool[])[true, false])
            {
                var left = share * made.Sum();
                var worth = made.Zip(import, (kwh, p) => kwh * p).Sum();
                var order = Enumerable.Range(0, 12).OrderBy(i => (lowEnd ? -1 : 1) * (import[i] - export[i]));
                foreach (var i in order)
                {
                    var part = Math.Min(left, made[i]);
                    worth -= part * (import[i] - export[i]);
                    left -= part;
                }
                Assert.Equal(worth, End(program, lowEnd).Worth, Promised);
            }
        });

    [Fact]
    public void No_flows_of_whole_kWh_lie_beyond_the_ends_and_some_reach_them() => // by trying everything
        Gen.Select(Gen.Int[-1, 4].Array[4], Gen.Int[0, 2].Array[10]).Sample((prices, kwh) =>
        {
            var program = new EndsProgram(new EvidencePrices([prices[0] / 10.0, prices[1] / 10.0], [prices[2] / 10.0, prices[3] / 10.0], [0, 0]), [0, 0]);
            var roof = new OpenGeneration("roof", 2, 1, 1);
            program.Generation.Add(roof);
            OpenFlow[] flows = [roof.Flow, program.Discharge, program.Import, program.Export, program.Charge];
            foreach (var flow in flows) flow.HighKwh[0] = flow.HighKwh[1] = 2;
            // Sums of flows that can have been: what went out came from somewhere.
            int[][] was = [.. Enumerable.Range(0, 2).Select(i => Possible(kwh[5 * i], kwh[(5 * i) + 1], kwh[(5 * i) + 2], kwh[(5 * i) + 3], kwh[(5 * i) + 4]))];
            for (var f = 0; f < flows.Length; f++)
                flows[f].SumOf[0] = flows[f].SumOf[1] = program.AddSum(was[0][f] + was[1][f], was[0][f] + was[1][f]);
            var (least, most) = (double.MaxValue, double.MinValue);
            foreach (var a in All())
            {
                var b = Enumerable.Range(0, 5).Select(f => was[0][f] + was[1][f] - a[f]).ToArray();
                if (b.Any(v => v is < 0 or > 2) || !IsPossible(a) || !IsPossible(b)) continue;
                var worth = Worth(program, 0, a[0], a[3], a[4], a[1]) + Worth(program, 1, b[0], b[3], b[4], b[1]);
                (least, most) = (Math.Min(least, worth), Math.Max(most, worth));
            }
            Assert.Equal(least, End(program, lowEnd: true).Worth, Promised);
            Assert.Equal(most, End(program, lowEnd: false).Worth, Promised);
        }, iter: 300);

    private static int[] Possible(int made, int discharge, int import, int export, int charge)
    {
        export = Math.Min(export, made + discharge);
        charge = Math.Min(charge, Math.Min(made + import, made + discharge + import - export));
        return [made, discharge, import, export, charge];
    }

    private static bool IsPossible(int[] f) => f[3] <= f[0] + f[1] && f[4] <= f[0] + f[2] && f[3] + f[4] <= f[0] + f[1] + f[2];

    private static IEnumerable<int[]> All() =>
        from made in Enumerable.Range(0, 3)
        from discharge in Enumerable.Range(0, 3)
        from import in Enumerable.Range(0, 3)
        from export in Enumerable.Range(0, 3)
        from charge in Enumerable.Range(0, 3)
        select (int[])[made, discharge, import, export, charge];

    [Fact]
    public void Totals_that_nothing_can_meet_are_missed_by_as_little_as_possible()
    {
        var mixed = End(Month([0.30, 0.20], [0.10, 0.10], [2, 2], 5), lowEnd: true).Flows;
        Assert.Equal(1, mixed.MissedKwh, 9);
        Assert.Equal([2.0, 2.0], mixed.Blocks[0].Export.Select(x => Math.Round(x, 9)));
    }
}
