namespace SolarEconomics;

/// <summary>A part that will have to be replaced.</summary>
/// <param name="Part">The part, in words.</param>
/// <param name="YearsAfterFirstPurchase">When, in years from the first purchase. Range: 0 and above.</param>
/// <param name="Cost">What it costs at today's prices, fitted. Unit: the site's currency.</param>
public sealed record Replacement(string Part, double YearsAfterFirstPurchase, decimal Cost);
