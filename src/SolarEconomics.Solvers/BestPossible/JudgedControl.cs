namespace SolarEconomics.Solvers;

/// <summary>A control beside the best that was possible.</summary>
/// <param name="Run">What it did.</param>
/// <param name="Best">What that cost, and the least it could have cost.</param>
/// <param name="CostAtRest">What it would have cost with the battery at rest; <see langword="null"/> where that serves less and unserved energy has no price.</param>
public sealed record JudgedControl(EnergyFlows Run, BestPossibleCost Best, double? CostAtRest)
{
    // A saving smaller than this has no share: the battery had nothing to do.
    private const double LeastSaving = 1e-6;

    /// <summary>Saving over the battery at rest.</summary>
    public double? Saving => CostAtRest - Best.Cost;

    /// <summary>The most that could have been saved.</summary>
    public double? ReachableSaving => CostAtRest - Best.LeastCost;

    /// <summary>Share of the reachable saving that the control got, at most 1 but for last digits; below 0 where it did worse than rest. <see langword="null"/>
    /// where nothing was to be had or it cannot be told.</summary>
    public double? Share => ReachableSaving > LeastSaving ? Saving / ReachableSaving : null;
}
