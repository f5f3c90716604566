namespace SolarEconomics;

/// <summary>An input of an outlook that is known by its odds only.</summary>
/// <param name="Input">The input.</param>
/// <param name="Distribution">Its odds.</param>
public sealed record UncertainInput(OutlookInput Input, IDistribution Distribution);
