namespace SolarEconomics.Notebook;

/// <summary>Asks a session to work out one step.</summary>
/// <param name="StepId">Name of the step in its file; the events of the run carry it.</param>
/// <param name="Code">Its C#.</param>
/// <param name="Place">How messages call the step, for example <c>step 4</c>.</param>
public sealed record RunStep(string StepId, string Code, string Place = "this step") : SessionCommand;
