using System.Globalization;

namespace SolarEconomics;

/// <summary>A life-cycle cost as a sum of present costs.</summary>
/// <param name="Parts">Name and present cost of each part, in the order given.</param>
/// <param name="Total">Sum of the parts.</param>
/// <param name="PerYear">The level yearly cost that is worth as much.</param>
/// <param name="DiscountRate">Rate used.</param>
/// <param name="Years">Years of the study.</param>
public sealed record LifeCycleCost(
    IReadOnlyList<(string Name, Money PresentCost)> Parts, Money Total, Money PerYear, Rate DiscountRate, int Years) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        return new Finding(
            Print(Total) + " " + Total.Currency,
            $"is the life-cycle cost over {Years.ToString(culture)} years in today's value, {Print(PerYear)} {PerYear.Currency} a year.")
        {
            Notes = [$"Discount rate: {DiscountRate}. Prices: {Total.Basis}."],
            Tables =
            [
                new FindingTable($"Present cost ({Total.Currency})", ["Part", "Present cost"],
                    [.. Parts.Select(p => (IReadOnlyList<string>)[p.Name, Print(p.PresentCost)])]),
            ],
        };

        string Print(Money amount) => amount.Amount.ToString("#,0.00", culture);
    }
}
