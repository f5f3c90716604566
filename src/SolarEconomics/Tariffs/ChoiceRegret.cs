namespace SolarEconomics;

/// <summary>What it cost to choose by last year's readings.</summary>
/// <param name="Year">The billed year of the readings; 2 is the second.</param>
/// <param name="Chosen">The tariff that was cheapest in the year before.</param>
/// <param name="Best">The tariff that was cheapest in the billed year.</param>
/// <param name="Cost">Bill of the chosen less bill of the best, 0 or more.</param>
public sealed record ChoiceRegret(int Year, string Chosen, string Best, Money Cost);
