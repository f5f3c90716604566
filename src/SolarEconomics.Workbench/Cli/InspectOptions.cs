namespace SolarEconomics.Workbench;

/// <summary>What <c>inspect</c> was asked.</summary>
/// <param name="Files">The files as typed.</param>
/// <param name="Zone">Clock of bare local times, or null for the format's own.</param>
/// <param name="Json">Whether to print for another program.</param>
internal sealed record InspectOptions(IReadOnlyList<string> Files, string? Zone, bool Json);
