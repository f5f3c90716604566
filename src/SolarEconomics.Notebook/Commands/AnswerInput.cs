namespace SolarEconomics.Notebook;

/// <summary>Answers an <see cref="InputAsked"/>.</summary>
/// <param name="InputId">Name of the question.</param>
/// <param name="Text">The line of text.</param>
internal sealed record AnswerInput(string InputId, string Text) : SessionCommand;
