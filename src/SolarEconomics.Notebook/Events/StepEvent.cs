namespace SolarEconomics.Notebook;

/// <summary>An event of one step.</summary>
/// <param name="StepId">Name of the step.</param>
public abstract record StepEvent(string StepId) : SessionEvent;
