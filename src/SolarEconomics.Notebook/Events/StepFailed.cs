namespace SolarEconomics.Notebook;

/// <summary>A step failed; an error output with the same words came before.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="Error">What went wrong.</param>
/// <param name="Took">How long it worked.</param>
public sealed record StepFailed(string StepId, StepError Error, TimeSpan Took) : StepEnded(StepId, Took);
