using System.Globalization;

namespace SolarEconomics;

/// <summary>Options beside each other and beside doing nothing, over one horizon, ranked by net present value.</summary>
/// <param name="Ranked">The options, the one worth most first.</param>
/// <param name="DoNothingIsBest">Whether no option is worth its price.</param>
/// <param name="Flips">Where another measure ranks otherwise, and why; one sentence each.</param>
/// <remarks>Ranking is by net present value: rate of return, savings-to-investment ratio and payback stand beside it and never rank options that exclude each other.</remarks>
public sealed record UpgradeComparison(IReadOnlyList<OptionResult> Ranked, bool DoNothingIsBest, IReadOnlyList<string> Flips) : IFinding
{
    /// <summary>The best options together under a budget: an exact optimum, with what excludes and needs what.</summary>
    /// <param name="budget">What may be spent. Range: 0 or more.</param>
    /// <exception cref="UnknownNameException">An option excludes or needs one that is not among them.</exception>
    /// <remarks>An option's cost is its price; its worth its net present value. Worths add up: options that act on each other stand as a combination of their own.</remarks>
    public BudgetChoice Within(Money budget) => BudgetPlan.Best(AsBudgetOptions(), budget);

    /// <summary>The options as a budget sees them, for a solver of your own or of many options.</summary>
    public IReadOnlyList<BudgetOption> AsBudgetOptions() =>
        [.. Ranked.Select(r => new BudgetOption(r.Option.Name, r.Npv with { Amount = r.Option.Price }, r.Npv) { Excludes = r.Option.Excludes, Needs = r.Option.Needs })];

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => ComparisonWords.Say(this, culture);
}
