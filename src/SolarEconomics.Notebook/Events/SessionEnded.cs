namespace SolarEconomics.Notebook;

/// <summary>The session's process ended; its variables are gone, the document is whole.</summary>
/// <param name="Reason">What ended it.</param>
/// <param name="Words">The same in a sentence for the reader.</param>
public sealed record SessionEnded(EndReason Reason, string Words) : SessionEvent;
