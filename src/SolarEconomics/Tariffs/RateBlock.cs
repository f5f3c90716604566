namespace SolarEconomics;

/// <summary>One block of a rate.</summary>
/// <param name="UpToKwh">Where the block ends, counted from 0; <see langword="null"/> for all that is left. Above the block before it.</param>
/// <param name="PerKwh">Price before tax, per kWh.</param>
public sealed record RateBlock(decimal? UpToKwh, decimal PerKwh);
