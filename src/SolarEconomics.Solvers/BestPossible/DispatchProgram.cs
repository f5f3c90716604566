using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers;

/// <summary>The linear program of some intervals in a row: what each part of the plant gives and takes, at the least cost.</summary>
internal sealed partial class DispatchProgram : IDisposable
{
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly RunLimits _limits;
    private readonly int _from;
    private readonly int _to;
    private readonly Dictionary<int, List<Variable>> _waiting = [];

    internal DispatchProgram(RunLimits limits, int from, int to)
    {
        (_limits, _from, _to) = (limits, from, to);
        _solver.Objective().SetMinimization();
        // All is in kWh and of one size: scaling would only double the time.
        _solver.SetSolverSpecificParametersAsString("use_scaling: false");
        AddWaiting();
        var stored = StoredAt(from);
        for (var i = from; i < to; i++)
        {
            var after = StoredAt(i + 1);
            if (limits.IsDark(i)) AddDark(i, stored, after);
            else AddInterval(i, stored, after);
            stored = after;
        }
    }

    /// <summary>The least cost of the window. Unit: the currency of the prices.</summary>
    internal double Least(CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        using var stop = cancel.Register(() => _solver.InterruptSolve());
        var status = _solver.Solve();
        cancel.ThrowIfCancellationRequested();
        // The run itself is among the answers, so that anything else than an optimum is a fault.
        return status == Solver.ResultStatus.OPTIMAL ? _solver.Objective().Value() : throw Throw.NoOptimum("the best possible dispatch", status.ToString());
    }

    public void Dispose() => _solver.Dispose();

    /// <summary>Inside the cells before an interval: at both ends of the whole run as the control had it, elsewhere free.</summary>
    private Variable StoredAt(int i)
    {
        var stored = _limits.Run.StoredKwh;
        var fullKwh = _limits.Battery.UsableKwh;
        return i == 0 ? Between(stored[0], stored[0])
            : i == stored.Length - 1 ? Between(Math.Min(stored[i], fullKwh), fullKwh)
            : Between(Math.Max(0, _limits.LeastStoredKwh - Slack(0)), fullKwh);
    }

    private void AddWaiting()
    {
        foreach (var load in _limits.Waiting)
        {
            foreach (var (from, to, lowKwh, highKwh) in load.Stretches(_from, _to))
            {
                var sum = _solver.MakeConstraint(Math.Max(0, lowKwh - Slack(lowKwh)), highKwh + Slack(highKwh));
                for (var i = from; i < to; i++)
                {
                    if (_limits.IsDark(i)) continue;
                    var run = Between(0, load.MostKwh(i));
                    sum.SetCoefficient(run, 1);
                    if (!_waiting.TryGetValue(i, out var list)) _waiting[i] = list = [];
                    list.Add(run);
                }
            }
        }
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

    /// <summary>Less than a millionth of a watt-hour is nothing: it lies below what the solver tells apart, and would strain it.</summary>
    private static double Clean(double kwh) => kwh < 1e-9 ? 0 : kwh;

    /// <summary>Sums of floating point may lie above what they are made of by their last digits.</summary>
    private static double Slack(double kwh) => 1e-9 * (1 + Math.Abs(kwh));
}
