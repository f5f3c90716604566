using NodaTime;

namespace SolarEconomics;

/// <summary>What a counter showed first and last in a record: between two records of it, the difference is energy too.</summary>
/// <param name="First">Time of the first state.</param>
/// <param name="FirstKwh">What it showed then.</param>
/// <param name="Last">Time of the last state.</param>
/// <param name="LastKwh">What it showed then.</param>
internal sealed record CounterEnds(Instant First, double FirstKwh, Instant Last, double LastKwh);
