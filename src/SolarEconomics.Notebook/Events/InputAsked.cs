namespace SolarEconomics.Notebook;

/// <summary>A step waits for a line of text from the reader; answer it through the session.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="InputId">Name of the question.</param>
/// <param name="Prompt">What is asked.</param>
/// <param name="IsSecret">Whether the answer should not be shown while it is typed.</param>
public sealed record InputAsked(string StepId, string InputId, string Prompt, bool IsSecret) : StepEvent(StepId);
