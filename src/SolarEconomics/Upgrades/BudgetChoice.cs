using System.Globalization;

namespace SolarEconomics;

/// <summary>The options worth most together within a budget: an exact optimum.</summary>
/// <param name="Budget">What may be spent now.</param>
/// <param name="Chosen">Options to choose, in the order given; none where doing nothing is worth most.</param>
/// <param name="LeftOut">The other options, in the order given.</param>
/// <param name="Cost">Cost of those chosen.</param>
/// <param name="Worth">Worth of those chosen; 0 or more, as nothing may be chosen.</param>
/// <remarks>Of choices worth the same the cheaper one stands, of those the one with the earlier options.</remarks>
public sealed record BudgetChoice(Money Budget, IReadOnlyList<BudgetOption> Chosen, IReadOnlyList<BudgetOption> LeftOut, Money Cost, Money Worth) : IFinding
{
    /// <summary>What the budget leaves over.</summary>
    public Money Left => Budget - Cost;

    internal static BudgetChoice Of(BudgetProblem problem, Func<int, bool> isChosen)
    {
        var chosen = Enumerable.Range(0, problem.Options.Count).Where(isChosen).ToList();
        return new BudgetChoice(problem.Budget, [.. chosen.Select(i => problem.Options[i])],
            [.. problem.Options.Where((_, i) => !chosen.Contains(i))],
            problem.Budget with { Amount = chosen.Sum(i => problem.Options[i].Cost.Amount) },
            problem.Budget with { Amount = chosen.Sum(i => problem.Options[i].Worth.Amount) });
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var words = Chosen.Count == 0
            ? $"is the best that {Wording.Whole(Budget, culture)} can do: no choice within it is worth more than doing nothing."
            : $"is what the best choice within {Wording.Whole(Budget, culture)} is worth: {string.Join(" and ", Chosen.Select(o => o.Name))}, " +
              $"for {Wording.Whole(Cost, culture)}. {Wording.Whole(Left, culture)} of the budget is left.";
        return new Finding(Wording.Signed(Worth, culture), words)
        {
            Tables =
            [
                new FindingTable($"Options ({Budget.Currency})", ["Option", "Cost", "Worth", "Chosen"],
                    [.. Chosen.Select(o => Row(o, "yes", culture)), .. LeftOut.Select(o => Row(o, "no", culture))]),
            ],
            Notes =
            [
                "Every combination that the budget and the options' own rules allow was weighed: no other is worth more.",
                "The worth of an option counts the same whatever else is chosen; options that act on each other stand as a combination of their own.",
            ],
            Cautions = [Cautions.Money],
        };
    }

    private static string[] Row(BudgetOption option, string chosen, CultureInfo culture) =>
        [option.Name, Wording.Whole(option.Cost, culture), Wording.Signed(option.Worth, culture), chosen];
}
