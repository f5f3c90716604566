namespace SolarEconomics.Notebook;

/// <summary>The session is in another state.</summary>
/// <param name="State">The new state.</param>
public sealed record StateChanged(SessionState State) : SessionEvent;
