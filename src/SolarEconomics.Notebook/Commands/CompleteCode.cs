namespace SolarEconomics.Notebook;

/// <summary>Asks for ways to go on typing.</summary>
/// <param name="RequestId">Number that the answer carries.</param>
/// <param name="Code">The code as typed so far.</param>
/// <param name="Position">Place of the caret, counted in UTF-16 units from 0.</param>
internal sealed record CompleteCode(int RequestId, string Code, int Position) : SessionCommand;
