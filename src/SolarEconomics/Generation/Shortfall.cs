using NodaTime;

namespace SolarEconomics;

/// <summary>Days in a row on which a plant made less than its weather allowed, and what they look like.</summary>
/// <param name="Kind">What the days look like. A likeness, not a proof.</param>
/// <param name="Days">The days, half-open.</param>
/// <param name="LostKwh">Expected less measured over these days.</param>
/// <param name="Why">What points to this kind, in words.</param>
public sealed record Shortfall(ShortfallKind Kind, DateSpan Days, double LostKwh, string Why)
{
    /// <summary>What the energy would have been worth at one price.</summary>
    /// <param name="pricePerKwh">Price of one kWh.</param>
    public Money Worth(Money pricePerKwh) => pricePerKwh with { Amount = pricePerKwh.Amount * (decimal)LostKwh };
}
