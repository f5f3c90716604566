namespace SolarEconomics.Notebook;

/// <summary>The answer to <see cref="ReadTable"/>; for the asking side only.</summary>
/// <param name="RequestId">Number of the request.</param>
/// <param name="Page">The rows; <see langword="null"/> where the session does not hold the table any more.</param>
internal sealed record TableRead(int RequestId, TablePage? Page) : SessionEvent;
