namespace SolarEconomics.Solvers;

/// <summary>All messages of the solvers: found, where, expected, what to do.</summary>
internal static class Throw
{
    internal static InvalidOperationException NoOptimum(string program, string status) =>
        new($"The solver ended with \"{status}\" for {program}, expected an optimum, as every such program has one. Report the input: this is a fault of ours.");

    internal static ArgumentException NothingCosts() =>
        new("Found no price of import and no generator, expected a price per kWh: without one every flow costs the same. Give the conditions their prices first, for example with PricedBy.");

    internal static ArgumentException BillsOnOtherIntervals(IntervalGrid grid, Timeline time) => new(FormattableString.Invariant(
        $"Found a tariff laid on {grid.Count} intervals from {grid.Start} and a run of {time.Count} intervals from {time.StartOf(0)}, expected the same ones. Lay the tariff on the run's own intervals with On."), "options");

    internal static ArgumentException NoControls() => new("Found no control, expected at least one to judge, for example Control.SelfConsumption.");

    internal static ArgumentOutOfRangeException AmountsTooLong(decimal sum, int decimals) =>
        new("options", sum, FormattableString.Invariant(
            $"Found amounts that sum to {sum} with {decimals} decimals, expected at most 17 digits in all. Round the amounts to the currency's smallest coin first."));
}
