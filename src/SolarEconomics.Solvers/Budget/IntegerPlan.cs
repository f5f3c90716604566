namespace SolarEconomics.Solvers;

/// <summary>Chooses among any number of options under a budget by an integer program.</summary>
/// <remarks>Safe between threads: each call has a model and a solver of its own.</remarks>
public static class IntegerPlan
{
    /// <summary>The options worth most together: the same answer as <see cref="BudgetPlan.Best"/>, for more options than can be enumerated.</summary>
    /// <param name="options">What could be bought. Shape: up to some hundreds.</param>
    /// <param name="budget">What may be spent now. Range: 0 or more.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="MixedMoneyException">Options and budget differ in currency or price basis.</exception>
    /// <exception cref="UnknownNameException">An option excludes or needs one that is not there.</exception>
    /// <exception cref="ArgumentException">A name stands twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A budget or cost below 0, or amounts too long to be summed exactly.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped before the optimum was proved.</exception>
    /// <remarks>Equation: as for <see cref="BudgetPlan.Best"/>. Amounts are whole numbers of their smallest decimal, so the optimum is exact: no tolerance.
    /// Of choices worth the same the cheaper one stands; of those equal in both, the one with the earlier options.</remarks>
    public static BudgetChoice Best(IEnumerable<BudgetOption> options, Money budget, CancellationToken cancel = default)
    {
        var problem = new BudgetProblem(options, budget);
        var program = new BudgetProgram(problem);
        var isChosen = program.Solve(cancel);
        return BudgetChoice.Of(problem, i => isChosen[i]);
    }
}
