namespace SolarEconomics;

internal static partial class Throw
{
    internal static ArgumentOutOfRangeException NegativeBudget(Money budget) =>
        new(nameof(budget), budget, "Expected a budget of 0 or more.");

    internal static ArgumentOutOfRangeException NegativeCost(BudgetOption option) =>
        new("Cost", option.Cost, $"{option.Name}: expected a cost of 0 or more. What is received belongs to the option's worth.");

    internal static ArgumentException OptionTwice(string name) =>
        new($"Found two options named \"{name}\", expected a name of its own for each. Rename one of them.");

    internal static UnknownNameException UnknownOption(string option, string rule, string name, IEnumerable<string> names) =>
        new($"{option}: found that it {rule} \"{name}\", expected one of the options: {Nearest.List(name, names, 5)}.");

    internal static ArgumentException OptionAgainstItself(string name, string rule) =>
        new($"{name}: found that it {rule} itself, expected another option. Leave its own name out.");

    internal static ArgumentException TooManyOptions(int count, int most) =>
        new(FormattableString.Invariant($"Found {count} options, expected at most {most} to weigh every combination. ") +
            "Use IntegerPlan.Best of SolarEconomics.Solvers, which is as exact and has no such limit.");
}
