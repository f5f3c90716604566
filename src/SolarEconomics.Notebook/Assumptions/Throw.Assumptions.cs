using System.Globalization;

namespace SolarEconomics.Notebook;

internal static partial class Throw
{
    internal static string UnreadableAssumption(string name, int line) => string.Create(CultureInfo.InvariantCulture,
        $"Assumption {name} (line {line} of its step): found a declaration that cannot be set, expected plain numbers and texts, for example ") +
        "var discountRate = Assume.Rate(\"Discount rate\", 0.05, from: 0, to: 0.15);";

    internal static string AssumptionTwice(string name) =>
        $"Assumption {name}: found two declarations, expected one; the first is used. Give the second another name.";

    internal static string NoAssumption(string name, IEnumerable<string> names)
    {
        var nearest = Nearest.List(name, names, most: 5);
        return nearest.Length == 0
            ? $"Found the assumption \"{name}\", but this notebook declares none. A code step declares one, for example: var growth = Assume.Rate(\"Price growth\", 0.03, from: 0, to: 0.08);"
            : $"Found the assumption \"{name}\", expected one that the notebook declares, nearest first: {nearest}.";
    }

    internal static string NotANumber(NotebookAssumption assumption, string text) =>
        $"{assumption.Name}: found \"{text}\", expected a number with a point for decimals, {Range(assumption)}.";

    internal static string OutOfRange(NotebookAssumption assumption, string text) =>
        $"{assumption.Name}: found {text.Trim()}, expected a number {Range(assumption)}.";

    internal static string NotWhole(NotebookAssumption assumption, string text) =>
        $"{assumption.Name}: found {text.Trim()}, expected whole years {Range(assumption)}.";

    private static string Range(NotebookAssumption assumption) => string.Create(CultureInfo.InvariantCulture,
        $"from {assumption.From} to {assumption.To} ({assumption.Kind switch
        {
            AssumptionKind.Rate => "a fraction a year; 5 % is written 0.05",
            AssumptionKind.Share => "a fraction; 35 % is written 0.35",
            _ => assumption.Unit,
        }})");
}
