namespace SolarEconomics.Notebook;

/// <summary>The answer to <see cref="CompleteCode"/>; for the asking side only.</summary>
/// <param name="RequestId">Number of the request.</param>
/// <param name="Items">Ways to go on.</param>
internal sealed record CompletionsFound(int RequestId, IReadOnlyList<Completion> Items) : SessionEvent;
