namespace SolarEconomics.Notebook;

/// <summary>An event with which the run of a step ends.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="Took">How long it worked.</param>
public abstract record StepEnded(string StepId, TimeSpan Took) : StepEvent(StepId);
