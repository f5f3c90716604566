using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers;

/// <summary>The linear program of some intervals in a row: what each part of the plant gives and takes, at the least cost.</summary>
/// <remarks>What is fixed or cannot be is no variable: a year of hours of a home with arrays and one battery has five variables and two equations an hour.</remarks>
internal sealed partial class DispatchProgram : IDisposable
{
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly RunLimits _limits;
    private readonly int _from;
    private readonly int _to;
    private readonly bool _keepsCharge;
    private readonly Dictionary<int, List<Variable>> _waiting = [];
    private readonly Variable?[] _import;
    private readonly Variable?[] _export;

    internal DispatchProgram(RunLimits limits, int from, int to, bool keepsCharge = false)
    {
        (_limits, _from, _to, _keepsCharge) = (limits, from, to, keepsCharge);
        (_import, _export) = (new Variable?[to - from], new Variable?[to - from]);
        _solver.Objective().SetMinimization();
        AddWaiting();
        var stored = StoredAt(from);
        for (var i = from; i < to; i++)
        {
            var after = StoredAt(i + 1);
            if (limits.IsDark(i)) AddDark(i, stored, after);
            else AddInterval(i, stored, after);
            stored = after;
        }
        if (limits.Costs.Floor is { } floor) AddBills(floor);
    }

    /// <summary>The least cost of the window. Unit: the currency of the prices.</summary>
    internal double Least(CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        using var stop = cancel.Register(() => _solver.InterruptSolve());
        // All is in kWh and of one size, so that scaling takes its time for nothing; the plainest choice of the next column takes a third of the time of the steepest.
        var status = Solve("use_scaling: false feasibility_rule: DANTZIG optimization_rule: DANTZIG");
        cancel.ThrowIfCancellationRequested();
        if (status != Solver.ResultStatus.OPTIMAL)
        {
            // Sizes far apart after all (a power limit of nearly nothing): from the beginning, the careful way.
            _solver.Reset();
            status = Solve("use_scaling: true feasibility_rule: STEEPEST_EDGE optimization_rule: STEEPEST_EDGE");
        }
        cancel.ThrowIfCancellationRequested();
        if (status != Solver.ResultStatus.OPTIMAL)
        {
            // The shortening of the program before it is solved may itself lose its way among sizes so far apart: once more, whole and from the other side.
            _solver.Reset();
            status = Solve("use_scaling: true use_preprocessing: false use_dual_simplex: true feasibility_rule: STEEPEST_EDGE optimization_rule: STEEPEST_EDGE");
        }
        cancel.ThrowIfCancellationRequested();
        // The run itself is among the answers, so that anything else than an optimum is a fault.
        return status == Solver.ResultStatus.OPTIMAL ? _solver.Objective().Value() : throw Throw.NoOptimum("the best possible dispatch", status.ToString());
    }

    public void Dispose() => _solver.Dispose();

    private Solver.ResultStatus Solve(string rules)
    {
        _solver.SetSolverSpecificParametersAsString(rules);
        return _solver.Solve();
    }

    /// <summary>Inside the cells before an interval: at both ends of the whole run as the control had it, elsewhere free, but for a window that keeps the control's charge.</summary>
    private Variable StoredAt(int i)
    {
        var stored = _limits.Run.StoredKwh;
        var fullKwh = _limits.Battery.UsableKwh;
        return i == 0 || (_keepsCharge && i == _from) ? Between(stored[i], stored[i])
            : i == stored.Length - 1 || (_keepsCharge && i == _to) ? Between(Math.Max(0, Math.Min(stored[i], fullKwh) - Left(_from, _to)), fullKwh)
            : Between(Math.Max(0, _limits.LeastStoredKwh - Slack(0)), fullKwh);
    }

    private void AddWaiting()
    {
        foreach (var load in _limits.Waiting)
        {
            var total = load.RanLate ? Bounded(TotalOf(load)) : null;
            foreach (var (from, to, lowKwh, highKwh) in load.Stretches(_from, _to))
            {
                var sum = Bounded((lowKwh - Left(from, to), highKwh));
                for (var i = from; i < to; i++) AddRun(i, load.MostKwh(i), sum, total);
            }
            if (total is null) continue;
            for (var i = _from; i < _to; i++)
                if (load.MostLateKwh(i) > 0) AddRun(i, load.MostLateKwh(i), total);
        }
    }

    private (double LowKwh, double HighKwh) TotalOf(WaitingLimits load)
    {
        var (lowKwh, highKwh) = load.Total(_from, _to);
        return (lowKwh - Left(_from, _to), highKwh);
    }

    private Constraint Bounded((double LowKwh, double HighKwh) kwh) => _solver.MakeConstraint(Math.Max(0, kwh.LowKwh - Slack(kwh.LowKwh)), kwh.HighKwh + Slack(kwh.HighKwh));

    private void AddRun(int i, double mostKwh, params ReadOnlySpan<Constraint?> sums)
    {
        if (_limits.IsDark(i)) return;
        var run = Between(0, mostKwh);
        foreach (var sum in sums) sum?.SetCoefficient(run, 1);
        if (!_waiting.TryGetValue(i, out var list)) _waiting[i] = list = [];
        list.Add(run);
    }

    private void AddDark(int i, Variable stored, Variable after)
    {
        var keeps = _solver.MakeConstraint(0, 0);
        keeps.SetCoefficient(after, 1);
        keeps.SetCoefficient(stored, -_limits.Battery.LeftAfter(_limits.Hours(i)));
        // What a dark home wants is unserved whatever anyone decides.
        _solver.Objective().SetOffset(_solver.Objective().Offset() + (_limits.Costs.Unserved * _limits.UseKwh(i)));
    }

    private Variable Between(double lowKwh, double highKwh) => _solver.MakeNumVar(Clean(lowKwh), Clean(highKwh), "");

    /// <summary>Less than some millionths of a watt-hour is nothing: the solver tells apart about 1e-8, and breaks off over limits of that size. <see cref="Slack"/> and
    /// <see cref="Left"/> give back what is left out so, in the favour of the bound.</summary>
    private const double DustKwh = 2e-8;

    private static double Clean(double kwh) => kwh < DustKwh ? 0 : kwh;

    /// <summary>An interval may lack what each of its five sources was too small to count for, and the last digits of its sums.</summary>
    private static double Slack(double kwh) => 5 * DustKwh * (1 + Math.Abs(kwh));

    /// <summary>What some intervals, each too small to count, may have brought together.</summary>
    private static double Left(int from, int to) => DustKwh * (to - from);

    /// <summary>A price of next to nothing strains the solver as energies do: a cost counts as none, a gain as a little more than it is.</summary>
    private static double Favourable(double pricePerKwh)
    {
        const double Dust = 1e-7;
        return Math.Abs(pricePerKwh) >= Dust ? pricePerKwh : pricePerKwh < 0 ? -Dust : 0;
    }
}
