using System.Globalization;

namespace SolarEconomics.Solvers;

/// <summary>Controls side by side, each with how much of the reachable saving it got.</summary>
/// <param name="Controls">The controls, in the order given.</param>
public sealed record JudgedControls(IReadOnlyList<JudgedControl> Controls) : IFinding
{
    /// <summary>Whether the least costs are estimates from some weeks, and no bounds yet.</summary>
    public bool IsPreview { get; internal init; }

    /// <summary>How far the least costs of a preview may be off: the largest standard error over its weeks. Unit: the currency of the prices; 0 in a full answer.</summary>
    public double PreviewOff { get; internal init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        if (IsPreview) return SayPreview(culture);
        var best = Controls.Where(c => c.Share is not null).MaxBy(c => c.Share!.Value);
        var words = best is null
            ? "of the reachable saving can be told: either nothing was to be had, or a battery at rest serves less and unserved energy has no price."
            : $"of the reachable saving is what \"{best.Best.ControlName}\" got: {Amount(best.Saving!.Value, culture)} of at most " +
              $"{Amount(best.ReachableSaving!.Value, culture)}, in the currency of the prices. No control can save more than that, as it would have to know sun, use and prices ahead.";
        return new Finding(best is null ? "no share" : Percent(best.Share!.Value, culture), words)
        {
            Tables = [Table(culture)],
            Notes =
            [
                "Each bound starts and ends at the charge of its control and serves as much. " +
                "Charging that slows near full, part load of a generator and what excludes each other are taken at their most favourable; curtailment is free.",
                Controls[0].Best.IsOfBills
                    ? "Whole bills: fixed charges, blocks and demand are in both. Blocks that get cheaper count in the bound at their lowest price, minimum bills and limits of credit not at all, and rounding in the home's favour."
                    : "Prices per kWh only: demand charges, blocks, caps and fixed charges are not in it.",
                FormattableString.Invariant($"Found by linear programming in {Controls[0].Best.Windows} window{(Controls[0].Best.Windows == 1 ? "" : "s, each free to begin and end at any charge")}."),
            ],
            Cautions = [.. CautionsOf(Controls[0].Run.System)],
        };
    }

    private Finding SayPreview(CultureInfo culture)
    {
        var best = Controls.Where(c => c.Share is not null).MaxBy(c => c.Share!.Value);
        var off = $"The least costs are estimates yet and no bounds, off by about {Amount(PreviewOff, culture)} (one standard error over the weeks).";
        return new Finding(best is null ? "no share" : Percent(best.Share!.Value, culture),
            best is null ? $"can be told of any control, in a preview from {Controls[0].Best.Windows} weeks. {off}"
                : $"is a preview from {Controls[0].Best.Windows} weeks: \"{best.Best.ControlName}\" got about so much of the reachable saving. {off}")
        {
            Tables = [Table(culture)],
            Cautions = [.. CautionsOf(Controls[0].Run.System)],
        };
    }

    private FindingTable Table(CultureInfo culture) => new("Cost of energy, in the currency of the prices", ["Control", "Cost", "At rest", "Least possible", "Share of the reachable saving"],
        [.. Controls.Select(c => Row(c, culture))]);

    internal static IEnumerable<string> CautionsOf(EnergySystem system)
    {
        if (system.Battery is not null) yield return Cautions.Batteries;
        if (system.Generator is not null) yield return Cautions.Backup;
        yield return Cautions.Money;
    }

    private static string[] Row(JudgedControl c, CultureInfo culture) =>
    [
        c.Best.ControlName, Amount(c.Best.Cost, culture), c.CostAtRest is { } rest ? Amount(rest, culture) : "serves less", Amount(c.Best.LeastCost, culture),
        c.Share is { } share ? Percent(share, culture) : "none",
    ];

    private static string Amount(double value, CultureInfo culture) => Wording.Minus(value.ToString("#,0.00", culture));

    private static string Percent(double share, CultureInfo culture) => Wording.Percent(share, culture);
}
