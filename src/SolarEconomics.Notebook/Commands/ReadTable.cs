namespace SolarEconomics.Notebook;

/// <summary>Asks for rows of a table that a step answered with.</summary>
/// <param name="RequestId">Number that the answer carries.</param>
/// <param name="Query">Which rows.</param>
internal sealed record ReadTable(int RequestId, TableQuery Query) : SessionCommand;
