namespace SolarEconomics.Workbench;

/// <summary>An earlier version that can be looked at and brought back.</summary>
/// <param name="Name">What to ask for it by.</param>
/// <param name="At">When the notebook was like that.</param>
internal sealed record VersionEntry(string Name, DateTimeOffset At);
