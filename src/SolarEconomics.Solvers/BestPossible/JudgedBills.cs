using System.Globalization;

namespace SolarEconomics.Solvers;

/// <summary>A first answer about controls by their whole bills, while the best that was possible is worked out.</summary>
/// <param name="Controls">Name, bills and what they would have been with the battery at rest; <see langword="null"/> where that serves less and unserved energy has no price.</param>
/// <param name="System">The plant.</param>
/// <remarks>The bills are final. Demand and blocks tie a whole billing period together, so that a few weeks say nothing of the least that a bill could have been.</remarks>
internal sealed record JudgedBills(IReadOnlyList<(string Control, double Cost, double? AtRest)> Controls, EnergySystem System) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var (control, cost, atRest) = Controls.MinBy(c => c.Cost);
        var beside = atRest is not { } rest ? "" : Math.Abs(rest - cost) < 0.005 ? ", as much as with the battery at rest"
            : $", {Amount(Math.Abs(rest - cost), culture)} {(rest > cost ? "less" : "more")} than with the battery at rest";
        return new Finding(Amount(cost, culture), $"is a preview: so much, in the currency of the prices, come the whole bills to with \"{control}\"{beside}{(Controls.Count > 1 ? ", the least of these controls" : "")}. "
            + "What was possible at best is being worked out.")
        {
            Tables = [new FindingTable("Whole bills, in the currency of the prices", ["Control", "Bills", "At rest"],
                [.. Controls.Select(c => (IReadOnlyList<string>)[c.Control, Amount(c.Cost, culture), c.AtRest is { } bills ? Amount(bills, culture) : "serves less"])])],
            Cautions = [.. JudgedControls.CautionsOf(System)],
        };
    }

    private static string Amount(double value, CultureInfo culture) => Wording.Minus(value.ToString("#,0.00", culture));
}
