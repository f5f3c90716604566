using NodaTime;

namespace SolarEconomics;

/// <summary>One line of a bill.</summary>
/// <param name="Part">Name of the part, as the tariff gives it.</param>
/// <param name="Days">Billing days that the line is for.</param>
/// <param name="Quantity">How much, in <paramref name="Unit"/>.</param>
/// <param name="Unit"><c>kWh</c>, <c>day</c>, <c>month</c>, ….</param>
/// <param name="Rate">Price before tax for one unit, in the bill's currency.</param>
/// <param name="Amount">Before tax, rounded if the tariff rounds lines; negative where it is a credit.</param>
/// <param name="Tax">Tax on the amount, not rounded: the bill rounds the sum.</param>
/// <param name="Why">The line in words that can be read aloud.</param>
public sealed record BillLine(string Part, DateSpan Days, decimal Quantity, string Unit, decimal Rate, Money Amount, Money Tax, string Why)
{
    /// <summary>Name of the tariff's part that wrote the line, which levies and discounts refer to.</summary>
    public string Source { get; init; } = Part;
}
