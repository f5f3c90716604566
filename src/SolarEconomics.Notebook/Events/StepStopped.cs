namespace SolarEconomics.Notebook;

/// <summary>A step was stopped, or its session ended under it.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="Words">Who or what stopped it, and what is left, in a sentence.</param>
/// <param name="Took">How long it worked.</param>
public sealed record StepStopped(string StepId, string Words, TimeSpan Took) : StepEnded(StepId, Took);
