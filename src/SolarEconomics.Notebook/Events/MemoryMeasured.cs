namespace SolarEconomics.Notebook;

/// <summary>The memory of the session's process was measured.</summary>
/// <param name="UsedBytes">Memory it holds.</param>
/// <param name="LimitBytes">Memory at which it is ended; 0 where there is no limit.</param>
public sealed record MemoryMeasured(long UsedBytes, long LimitBytes) : SessionEvent;
