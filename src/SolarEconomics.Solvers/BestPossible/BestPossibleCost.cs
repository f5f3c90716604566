namespace SolarEconomics.Solvers;

/// <summary>What a run cost and the least it could have cost. Unit: the currency of the prices.</summary>
/// <param name="ControlName">The control that decided the run.</param>
/// <param name="Cost">Cost of its energy: import less export, fuel and upkeep of the generator, unserved kWh where they have a price. Fixed charges are not in it.</param>
/// <param name="LeastCost">A cost below which no control could have come. The solver meets it to about 1e-6 of its size.</param>
/// <param name="Windows">Linear programs it took; with one, the bound is the optimum but for the favours named at <see cref="BestPossible"/>.</param>
public sealed record BestPossibleCost(string ControlName, double Cost, double LeastCost, int Windows)
{
    /// <summary>Whether both are whole bills, with fixed charges and rounding, rather than prices per kWh.</summary>
    public bool IsOfBills { get; init; }

    /// <summary>By how much the control may have missed the best. 0 or more, but for last digits.</summary>
    public double Gap => Cost - LeastCost;
}
