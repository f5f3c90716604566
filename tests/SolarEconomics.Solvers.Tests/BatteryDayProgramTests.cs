using CsCheck;
using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers.Tests;

/// <summary>The day of a battery that nobody read, against a linear program.</summary>
public class BatteryDayProgramTests
{
    [Fact]
    public void A_days_best_equals_that_of_a_linear_program() =>
        Gen.Select(Gen.Int[-3, 5].Array[8], Gen.Int[-3, 5].Array[8], Gen.Double[0.1, 2], Gen.Double[0, 12], Gen.Double[0.5, 1]).Sample((cost, worth, room, most, share) =>
        {
            var (charge, discharge) = (new double[8], new double[8]);
            BatteryDay.Lay(0, 8, room, most, share, [.. cost.Select(c => c / 10.0)], [.. worth.Select(w => w / 10.0)], charge, discharge);
            var laid = discharge.Zip(worth, (kwh, w) => kwh * w / 10).Sum() - charge.Zip(cost, (kwh, c) => kwh * c / 10).Sum();
            using var solver = Solver.CreateSolver("GLOP");
            LinearExpr value = new(), into = new(), outOf = new();
            for (var i = 0; i < 8; i++)
            {
                var (c, d) = (solver.MakeNumVar(0, room, ""), solver.MakeNumVar(0, room, ""));
                value += (d * (worth[i] / 10.0)) - (c * (cost[i] / 10.0));
                (into, outOf) = (into + c, outOf + d);
            }
            solver.Add(into <= most);
            solver.Add(outOf <= into);
            solver.Add(outOf >= into * share);
            solver.Maximize(value);
            Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
            Assert.Equal(solver.Objective().Value(), laid, 1e-6);
        }, iter: 300, threads: 1);
}
