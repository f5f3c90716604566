namespace SolarEconomics;

/// <summary>Checked options with their rules by index: what a solver weighs.</summary>
internal sealed class BudgetProblem
{
    internal BudgetProblem(IEnumerable<BudgetOption> options, Money budget)
    {
        ArgumentNullException.ThrowIfNull(options);
        Options = [.. options];
        Budget = budget;
        if (budget.Amount < 0) throw Throw.NegativeBudget(budget);
        var indexes = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var option in Options)
        {
            if (!indexes.TryAdd(option.Name, indexes.Count)) throw Throw.OptionTwice(option.Name);
            // Adding says currency and basis where they differ.
            _ = budget + option.Cost + option.Worth;
            if (option.Cost.Amount < 0) throw Throw.NegativeCost(option);
        }
        Exclusions = [.. Pairs(o => o.Excludes, "excludes", indexes).Select(p => (Math.Min(p.From, p.To), Math.Max(p.From, p.To))).Distinct()];
        Needs = [.. Pairs(o => o.Needs, "needs", indexes).Distinct()];
    }

    internal IReadOnlyList<BudgetOption> Options { get; }

    internal Money Budget { get; }

    /// <summary>Pairs that cannot stand together, the earlier one first.</summary>
    internal IReadOnlyList<(int A, int B)> Exclusions { get; }

    /// <summary>Pairs of which the first needs the second.</summary>
    internal IReadOnlyList<(int Option, int Needed)> Needs { get; }

    private IEnumerable<(int From, int To)> Pairs(Func<BudgetOption, IReadOnlyList<string>> names, string rule, Dictionary<string, int> indexes)
    {
        foreach (var option in Options)
        {
            foreach (var name in names(option))
            {
                if (!indexes.TryGetValue(name, out var other)) throw Throw.UnknownOption(option.Name, rule, name, indexes.Keys);
                if (other == indexes[option.Name]) throw Throw.OptionAgainstItself(option.Name, rule);
                yield return (indexes[option.Name], other);
            }
        }
    }
}
