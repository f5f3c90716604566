namespace SolarEconomics;

/// <summary>Missing intervals of one device whose sum the records bound together.</summary>
/// <param name="Intervals">Indexes on the grid, ascending.</param>
/// <param name="LowKwh">Lowest sum, at the device's measurement point.</param>
/// <param name="HighKwh">Highest sum, at the device's measurement point.</param>
internal sealed record GapGroup(int[] Intervals, double LowKwh, double HighKwh);
