namespace SolarEconomics;

/// <summary>One tier of a tariff that is chosen by the whole bill's energy.</summary>
/// <param name="UpToKwh">The tier takes bills up to this energy; <see langword="null"/> for all above.</param>
/// <param name="Steps">Its blocks, counted from 0.</param>
/// <param name="Fixed">Its fixed charge before tax, for each bill.</param>
public sealed record BillTier(decimal? UpToKwh, IReadOnlyList<RateBlock> Steps, decimal Fixed = 0);
