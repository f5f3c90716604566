namespace SolarEconomics.Notebook;

/// <summary>The session began to work a step out.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="RunNumber">The how-manieth run of this session, counted from 1.</param>
public sealed record StepStarted(string StepId, int RunNumber) : StepEvent(StepId);
