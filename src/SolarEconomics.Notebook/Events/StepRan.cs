namespace SolarEconomics.Notebook;

/// <summary>A step worked.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="RunNumber">The how-manieth run of this session, counted from 1.</param>
/// <param name="Took">How long it worked.</param>
public sealed record StepRan(string StepId, int RunNumber, TimeSpan Took) : StepEnded(StepId, Took);
