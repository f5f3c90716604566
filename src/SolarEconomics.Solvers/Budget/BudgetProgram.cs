using Google.OrTools.Sat;

namespace SolarEconomics.Solvers;

/// <summary>The integer program of a choice under a budget, solved first for the worth, then for the cost, then for the order.</summary>
internal sealed class BudgetProgram
{
    private readonly CpModel _model = new();
    private readonly BoolVar[] _chosen;
    private readonly long[] _cost;
    private readonly long[] _worth;

    internal BudgetProgram(BudgetProblem problem)
    {
        var costs = new WholeAmounts([.. problem.Options.Select(o => o.Cost.Amount)]);
        _cost = costs.Whole;
        _worth = new WholeAmounts([.. problem.Options.Select(o => o.Worth.Amount)]).Whole;
        _chosen = [.. problem.Options.Select(o => _model.NewBoolVar(o.Name))];
        _model.Add(LinearExpr.WeightedSum(_chosen, _cost) <= costs.Limit(problem.Budget.Amount));
        foreach (var (a, b) in problem.Exclusions) _model.AddBoolOr([_chosen[a].Not(), _chosen[b].Not()]);
        foreach (var (option, needed) in problem.Needs) _model.AddImplication(_chosen[option], _chosen[needed]);
    }

    internal bool[] Solve(CancellationToken cancel)
    {
        if (_chosen.Length == 0) return [];
        var worth = LinearExpr.WeightedSum(_chosen, _worth);
        _model.Maximize(worth);
        _model.Add(worth == Run(cancel).Sum(_worth));
        var cost = LinearExpr.WeightedSum(_chosen, _cost);
        _model.Minimize(cost);
        var best = Run(cancel);
        _model.Add(cost == best.Sum(_cost));
        return Earliest(best, cancel).IsChosen;
    }

    /// <summary>Puts each option in turn where a choice just as good can hold it.</summary>
    private Answer Earliest(Answer best, CancellationToken cancel)
    {
        for (var i = 0; i < _chosen.Length; i++)
        {
            if (!best.IsChosen[i])
            {
                _model.Maximize(_chosen[i]);
                best = Run(cancel);
            }
            _model.Add(_chosen[i] == (best.IsChosen[i] ? 1 : 0));
        }
        return best;
    }

    private Answer Run(CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1" };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        cancel.ThrowIfCancellationRequested();
        // Choosing nothing is always allowed, so anything else than an optimum is a fault.
        if (status != CpSolverStatus.Optimal) throw Throw.NoOptimum("the choice under a budget", status.ToString());
        return new Answer([.. _chosen.Select(solver.BooleanValue)]);
    }

    private sealed record Answer(bool[] IsChosen)
    {
        internal long Sum(long[] amounts) => amounts.Where((_, i) => IsChosen[i]).Sum();
    }
}
