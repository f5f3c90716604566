namespace SolarEconomics.Notebook;

/// <summary>Stops the step at work.</summary>
internal sealed record StopStep : SessionCommand;
