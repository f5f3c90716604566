using CsCheck;
using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers.Tests;

/// <summary>The bounds of the domain, which are cuts of a network, against a linear program written from the plain balances.</summary>
public class FlowBoundsTests
{
    [Fact]
    public void The_bounds_between_equal_those_of_a_linear_program_on_random_records() =>
        Windows.Sample(window =>
        {
            using var program = new Program(window);
            if (!program.IsPossible)
            {
                Assert.Throws<RecordException>(() => window.Bounds());
                return;
            }
            var b = window.Bounds();
            program.Check("array to use", b.ArrayToUse, p => p.ArrayToUse);
            program.Check("array to battery", b.ArrayToBattery, p => p.ArrayToBattery);
            program.Check("array to export", b.ArrayToExport, p => p.ArrayToExport);
            program.Check("kept on site", b.KeptOnSite, p => p.ArrayToUse + p.ArrayToBattery);
            program.Check("grid to use", b.GridToUse, p => p.GridToUse);
            program.Check("grid to battery", b.GridToBattery, p => p.GridToBattery);
            program.Check("battery to use", b.BatteryToUse, p => p.BatteryToUse);
            program.Check("battery to export", b.BatteryToExport, p => p.BatteryToExport);
            program.Check("generation", b.Records.Generation, p => p.Generation);
            program.Check("net import", b.Records.NetImport, p => p.Import - p.Export);
            program.Check("held", b.Records.HeldByBattery, p => p.Charge - p.Discharge);
            program.Check("use", b.Records.Use, p => p.Use);
        }, iter: 400, threads: 1);

    // Small whole numbers make ties and contradictions; every record is missing now and then.
    private static Gen<EnergyRange> Range(int low, EnergyRange unknown) =>
        Gen.Select(Gen.Int[low, 9], Gen.Int[0, 3], Gen.Int[0, 3]).Select((from, width, known) => known == 0 ? unknown : new EnergyRange(from, from + width));

    private static readonly Gen<FlowWindow> Windows =
        from generation in Range(0, EnergyRange.AtLeast(0))
        from import in Range(0, EnergyRange.AtLeast(0))
        from export in Range(0, EnergyRange.AtLeast(0))
        from net in Range(-9, EnergyRange.Unbounded)
        from charge in Range(0, default)
        from discharge in Range(0, default)
        from held in Range(-4, EnergyRange.Unbounded)
        from use in Range(0, EnergyRange.AtLeast(0))
        select new FlowWindow { Generation = generation, Import = import, Export = export, NetImport = net, Charge = charge, Discharge = discharge, HeldByBattery = held, Use = use };

    private sealed class Program : IDisposable
    {
        private readonly Solver _solver = Solver.CreateSolver("GLOP");

        internal Program(FlowWindow window)
        {
            (ArrayToUse, ArrayToBattery, ArrayToExport) = (Flow(), Flow(), Flow());
            (GridToUse, GridToBattery, BatteryToUse, BatteryToExport) = (Flow(), Flow(), Flow(), Flow());
            Within(window.Generation, Generation);
            Within(window.Import, Import);
            Within(window.Export, Export);
            Within(window.NetImport, Import - Export);
            Within(window.Charge, Charge);
            Within(window.Discharge, Discharge);
            Within(window.HeldByBattery, Charge - Discharge);
            Within(window.Use, Use);
            _solver.Minimize(ArrayToUse + 0.0);
            IsPossible = _solver.Solve() == Solver.ResultStatus.OPTIMAL;
        }

        internal bool IsPossible { get; }

        internal Variable ArrayToUse { get; }

        internal Variable ArrayToBattery { get; }

        internal Variable ArrayToExport { get; }

        internal Variable GridToUse { get; }

        internal Variable GridToBattery { get; }

        internal Variable BatteryToUse { get; }

        internal Variable BatteryToExport { get; }

        internal LinearExpr Generation => ArrayToUse + ArrayToBattery + ArrayToExport;

        internal LinearExpr Import => GridToUse + GridToBattery;

        internal LinearExpr Export => ArrayToExport + BatteryToExport;

        internal LinearExpr Charge => ArrayToBattery + GridToBattery;

        internal LinearExpr Discharge => BatteryToUse + BatteryToExport;

        internal LinearExpr Use => ArrayToUse + GridToUse + BatteryToUse;

        internal void Check(string name, EnergyRange bounds, Func<Program, LinearExpr> flow)
        {
            _solver.Minimize(flow(this));
            Assert.True(End(double.NegativeInfinity) is var low && Same(low, bounds.LowKwh), $"{name}: lowest {bounds.LowKwh}, by the program {low}");
            _solver.Maximize(flow(this));
            Assert.True(End(double.PositiveInfinity) is var high && Same(high, bounds.HighKwh), $"{name}: highest {bounds.HighKwh}, by the program {high}");
        }

        public void Dispose() => _solver.Dispose();

        private static bool Same(double a, double b) => a.Equals(b) || Math.Abs(a - b) < 1e-6;

        private double End(double unbounded) => _solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL => _solver.Objective().Value(),
            Solver.ResultStatus.UNBOUNDED or Solver.ResultStatus.INFEASIBLE => unbounded,
            var status => throw new InvalidOperationException(status.ToString()),
        };

        private Variable Flow() => _solver.MakeNumVar(0, double.PositiveInfinity, "");

        private void Within(EnergyRange range, LinearExpr sum) => _solver.Add(new RangeConstraint(sum, range.LowKwh, range.HighKwh));
    }
}
