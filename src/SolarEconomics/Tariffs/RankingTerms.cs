namespace SolarEconomics;

/// <summary>What holds for the home in a comparison, whatever the tariff.</summary>
/// <param name="Today">Name of the choice that it has today, or null.</param>
/// <param name="TaxReclaimedShare">Share of the tax that it reclaims.</param>
/// <param name="ConditionsMet">Conditions that it meets.</param>
internal sealed record RankingTerms(string? Today, decimal TaxReclaimedShare, IReadOnlyList<string> ConditionsMet);
