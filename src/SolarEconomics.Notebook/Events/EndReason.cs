namespace SolarEconomics.Notebook;

/// <summary>What ended a session's process.</summary>
public enum EndReason
{
    /// <summary>The reader asked for a fresh start or closed the notebook.</summary>
    Closed,

    /// <summary>A step did not stop in time, so its process was ended.</summary>
    DidNotStop,

    /// <summary>The code ended its own process.</summary>
    ExitedByCode,

    /// <summary>The code called itself without end.</summary>
    StackOverflow,

    /// <summary>The code took more memory than the limit.</summary>
    OutOfMemory,

    /// <summary>The process was ended from outside, or died of a fault.</summary>
    Killed,

    /// <summary>The process did not start.</summary>
    DidNotStart,
}
