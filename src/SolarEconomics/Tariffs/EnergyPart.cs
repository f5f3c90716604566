namespace SolarEconomics;

/// <summary>Energy priced per kWh by rates that together cover every hour once.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Side">Import is charged, export is credited.</param>
/// <param name="Rates">1 to 250 rates; at most one without windows, which takes the remaining hours.</param>
public sealed record EnergyPart(string Name, EnergySide Side, IReadOnlyList<EnergyRate> Rates) : TariffPart(Name);
