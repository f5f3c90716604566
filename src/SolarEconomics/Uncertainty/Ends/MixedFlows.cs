namespace SolarEconomics;

/// <summary>The flows at an end, block by block.</summary>
/// <param name="Blocks">The flows of each block.</param>
/// <param name="MissedKwh">By how much sums had to be missed because records contradict each other.</param>
/// <param name="Doubt">What more other flows might be worth, in the direction sought. Unit: currency.</param>
internal sealed record MixedFlows(IReadOnlyList<Pattern> Blocks, double MissedKwh, double Doubt);
