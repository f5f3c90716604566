namespace SolarEconomics.Notebook;

/// <summary>What a session is doing.</summary>
public enum SessionState
{
    /// <summary>Its process is starting.</summary>
    Starting,

    /// <summary>It waits for a step.</summary>
    Ready,

    /// <summary>It works a step out.</summary>
    Working,

    /// <summary>A stop was asked for and is not done yet.</summary>
    Stopping,

    /// <summary>Its process is gone; a fresh start makes a new one.</summary>
    Ended,
}
