namespace SolarEconomics.Workbench;

/// <summary>What <c>open</c> was asked.</summary>
/// <param name="Notebook">The file as typed, or null for the list of notebooks.</param>
/// <param name="NoBrowser">Print the address, start no browser.</param>
internal sealed record OpenOptions(string? Notebook, bool NoBrowser);
