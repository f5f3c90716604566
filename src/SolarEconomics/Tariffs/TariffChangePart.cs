namespace SolarEconomics;

/// <summary>One part of the difference between two tariffs.</summary>
/// <param name="Name">A rate of the first tariff's import, <c>export</c>, <c>fixed charges</c> or <c>the rest</c>.</param>
/// <param name="Saved">What the second tariff saves on it; below 0 where it costs more.</param>
public sealed record TariffChangePart(string Name, Money Saved);
