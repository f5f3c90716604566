namespace SolarEconomics;

/// <summary>One year of a plant that goes on.</summary>
/// <param name="Year">Number of the year, from 1.</param>
/// <param name="Totals">Its flows added up.</param>
/// <param name="UsableKwh">Capacity of the battery in that year. Unit: kWh.</param>
/// <param name="BatteryAge">Age of the battery at its start. Unit: years.</param>
/// <param name="BatteryCycles">Full cycles behind the battery at its end.</param>
/// <param name="ArrayFactor">Power of all arrays against the conditions', weighted by what each could make.</param>
/// <param name="EnergyCost">Import less feed-in at that year's prices, fixed charges left out, with fuel and upkeep of the generator. Unit: the currency of the prices.</param>
/// <param name="ReplacementCost">Paid at its end for a new battery, at that year's price. Unit: the currency of the prices; 0 in most years.</param>
public sealed record YearOfFlows(int Year, FlowTotals Totals, double UsableKwh, double BatteryAge, double BatteryCycles, double ArrayFactor, double EnergyCost, double ReplacementCost)
{
    /// <summary>Whether the battery was replaced at its end.</summary>
    public bool IsBatteryReplaced { get; init; }

    /// <summary>Whether its flows lie on a straight line, and its cost on a curve, between years that were worked out, as a preview's do.</summary>
    public bool IsEstimated { get; init; }
}
