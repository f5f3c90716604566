namespace SolarEconomics;

/// <summary>What a kWh changes at an hour of the day in a month, in the currency of the table per kWh, tax included.</summary>
/// <param name="Month">Calendar month, 1 to 12.</param>
/// <param name="Hour">Hour of the day, 0 to 23.</param>
/// <param name="Generated">What the bill falls by for one more kWh generated or delivered from a store, or one less used: the value left of the household's use.</param>
/// <param name="Used">What the bill rises by for one more kWh used or taken into a store, or one less generated: the value right of it.</param>
/// <remarks>The two differ at the edge of a block, a tier, a demand or a limit, and where import turns into export.</remarks>
public sealed record MarginalCell(int Month, int Hour, double Generated, double Used);
