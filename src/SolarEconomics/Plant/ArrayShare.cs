namespace SolarEconomics;

/// <summary>What age has left of an array, string by string.</summary>
/// <param name="Share">Share of the array's rating left. Range: 0 to 1.</param>
/// <param name="Strings">Share left of each string: of modules alike that of the weakest, as its current rules in series.</param>
/// <param name="Known">Modules of the array that are known one by one, by a maker's date or a test.</param>
public sealed record ArrayShare(double Share, IReadOnlyList<double> Strings, int Known);
