using CsCheck;
using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers.Tests;

/// <summary>The ends that the domain lays by mixing patterns, against a linear program written from the plain conditions.</summary>
public class EndsProgramTests
{
    [Fact]
    public void Both_ends_equal_those_of_a_linear_program_on_random_records()
    {
        var (met, contradicted) = (0, 0);
        Programs.Sample(program =>
        {
            foreach (var lowEnd in (bool[])[true, false])
            {
                var mixed = new PatternMix(program, lowEnd).Solve();
                var expected = Solved(program, lowEnd);
                if (expected is not { } end)
                {
                    contradicted++;
                    Assert.True(mixed.MissedKwh > 1e-6, "The solver says that the records contradict each other, the mix met them all.");
                    continue;
                }
                met++;
                Assert.True(mixed.MissedKwh < 1e-6, $"The solver met all sums, the mix missed {mixed.MissedKwh} kWh.");
                Assert.True(mixed.Doubt < 1e-5, $"The search was cut short with {mixed.Doubt} open.");
                CheckConditions(program, mixed);
                var worth = WorthOf(program, mixed);
                Assert.True(Math.Abs(worth - end) < 1e-5, $"{(lowEnd ? "Lowest" : "Highest")} by the mix {worth}, by the solver {end}.");
            }
        }, iter: 400, threads: 1);
        Assert.True(met > 400 && contradicted > 20, $"{met} ends could be met, {contradicted} could not: too few of one kind to say anything.");
    }

    /// <summary>Two months of three intervals: small whole numbers make ties, full intervals and contradictions.</summary>
    internal static readonly Gen<EndsProgram> Programs =
        from prices in Gen.Select(Gen.Int[-1, 5], Gen.Int[-1, 5]).Array[6]
        from hasBattery in Gen.Bool
        from places in Gen.Int[0, 4].Array[6].Array[1, 2]
        from efficiency in Gen.Int[0, 2].Array[2]
        from readUpTo in Gen.Int[0, 6].Array[2]
        from across in Gen.Bool
        from flows in Gen.Int[0, 3].Array[24]
        from standby in Gen.Int[0, 1]
        from contradicts in Gen.Int[0, 9]
        select Program(prices, hasBattery, places, efficiency, readUpTo, across, flows, standby, contradicts == 0);

    private static EndsProgram Program((int Import, int Export)[] prices, bool hasBattery, int[][] places, int[] efficiency, int[] readUpTo, bool across, int[] flows, int standby, bool contradicts)
    {
        var program = new EndsProgram(new EvidencePrices([.. prices.Select(p => p.Import / 10.0)], [.. prices.Select(p => p.Export / 10.0)], [0, 0, 0, 1, 1, 1]),
            [.. Enumerable.Repeat(standby * 0.25, 6)]);
        var made = new double[6];
        for (var k = 0; k < places.Length; k++)
        {
            var open = new OpenGeneration($"place {k}", 6, 1 - (efficiency[k] * 0.1), efficiency[k] == 1 ? 0.9 : 1);
            program.Generation.Add(open);
            for (var i = 0; i < 6; i++)
            {
                made[i] += places[k][i] * open.ToAcLow;
                var isRead = i < readUpTo[k];
                (open.Flow.LowKwh[i], open.Flow.HighKwh[i]) = isRead ? (places[k][i], places[k][i]) : (0, 5);
            }
            foreach (var (from, to) in across ? [(readUpTo[k], 6)] : ((int, int)[])[(readUpTo[k], 3), (Math.Max(3, readUpTo[k]), 6)])
            {
                if (to <= from) continue;
                var kwh = places[k][from..to].Sum();
                AddSum(program, open.Flow, from, to, kwh - (across ? 0.5 : 0), kwh + (k * 0.5));
            }
        }
        // True flows first, so that their sums can be met; now and then one that cannot.
        for (var i = 0; i < 6; i++)
        {
            var discharge = hasBattery ? Math.Min(2, flows[i]) : 0;
            var export = Math.Min(made[i] + discharge, flows[6 + i]);
            var charge = hasBattery ? Math.Min(2, flows[12 + i]) : 0;
            var import = Math.Max(flows[18 + i], charge + (standby * 0.25));
            (made[i], flows[i]) = (export, discharge);
            (flows[12 + i], flows[18 + i]) = (charge, (int)Math.Ceiling(import));
            program.Charge.HighKwh[i] = program.Discharge.HighKwh[i] = hasBattery ? 2 : 0;
            program.Export.HighKwh[i] = 20;
            program.Import.HighKwh[i] = 20;
        }
        for (var (from, to) = (0, 3); from < 6; (from, to) = (3, 6))
        {
            AddSum(program, program.Export, from, to, made[from..to].Sum() + (contradicts ? 40 : 0));
            AddSum(program, program.Import, from, to, 0, flows[(18 + from)..(18 + to)].Sum());
            if (hasBattery)
            {
                AddSum(program, program.Charge, from, to, flows[(12 + from)..(12 + to)].Sum());
                AddSum(program, program.Discharge, from, to, flows[from..to].Sum());
            }
            if (from == 3) break;
        }
        return program;
    }

    private static void AddSum(EndsProgram program, OpenFlow flow, int from, int to, double low, double? high = null)
    {
        var sum = program.AddSum(low, high ?? low);
        for (var i = from; i < to; i++) flow.SumOf[i] = sum;
    }

    private static double WorthOf(EndsProgram program, MixedFlows mixed)
    {
        var worth = 0.0;
        foreach (var block in mixed.Blocks)
            for (var n = 0; n < block.Count; n++)
            {
                var kept = block.Generation.Sum(g => g[n]) - block.Export[n] - block.Charge[n] + block.Discharge[n];
                worth += (program.Prices.Import[block.From + n] * kept) + (program.Prices.Export[block.From + n] * block.Export[n]);
            }
        return worth;
    }

    private static void CheckConditions(EndsProgram program, MixedFlows mixed)
    {
        const double dust = 1e-9;
        foreach (var block in mixed.Blocks)
            for (var n = 0; n < block.Count; n++)
            {
                var made = block.Generation.Sum(g => g[n]);
                Assert.True(block.Export[n] <= made + block.Discharge[n] + dust);
                Assert.True(block.Charge[n] <= made + block.Import[n] + dust);
                Assert.True(block.Export[n] + block.Charge[n] + program.StandbyKwh[block.From + n] <= made + block.Import[n] + block.Discharge[n] + dust);
            }
    }

    private static double? Solved(EndsProgram program, bool lowEnd)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var sums = program.Sums.Select(s => solver.MakeConstraint(s.LowKwh, s.HighKwh, "")).ToList();
        LinearExpr worth = new();
        Variable Free(OpenFlow flow, int i)
        {
            var kwh = solver.MakeNumVar(flow.LowKwh[i], flow.HighKwh[i], "");
            if (flow.SumOf[i] >= 0) sums[flow.SumOf[i]].SetCoefficient(kwh, 1);
            return kwh;
        }
        for (var i = 0; i < program.StandbyKwh.Length; i++)
        {
            var (x, m, c, d) = (Free(program.Export, i), Free(program.Import, i), Free(program.Charge, i), Free(program.Discharge, i));
            LinearExpr made = new();
            foreach (var place in program.Generation)
            {
                var counted = Free(place.Flow, i);
                var given = solver.MakeNumVar(0, double.PositiveInfinity, "");
                solver.Add(given >= counted * place.ToAcLow);
                solver.Add(given <= counted * place.ToAcHigh);
                made += given;
            }
            solver.Add(x <= made + d);
            solver.Add(c <= made + m);
            solver.Add(x + c + program.StandbyKwh[i] <= made + m + d);
            worth += (program.Prices.Import[i] * (made - x - c + d)) + (program.Prices.Export[i] * x);
        }
        if (lowEnd) solver.Minimize(worth);
        else solver.Maximize(worth);
        return solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL => solver.Objective().Value(),
            Solver.ResultStatus.INFEASIBLE => null,
            var status => throw new InvalidOperationException(status.ToString()),
        };
    }
}
