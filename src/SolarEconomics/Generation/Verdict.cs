namespace SolarEconomics;

/// <summary>How a value stands to its limit. There is no "safe": a check knows only the data it was given.</summary>
public enum Verdict
{
    /// <summary>A figure is missing, so nothing is known. Never counts as passed.</summary>
    CannotTell,

    /// <summary>The limit is broken.</summary>
    Fails,

    /// <summary>The limit holds within the data given.</summary>
    WithinTheData,

    /// <summary>Nothing breaks, but power is left unused.</summary>
    LeavesPowerUnused,
}
