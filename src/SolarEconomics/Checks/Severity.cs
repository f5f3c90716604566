namespace SolarEconomics;

/// <summary>How much a problem in a record matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; every kWh is counted.</summary>
    Note,

    /// <summary>A value is counted but may be wrong.</summary>
    Doubtful,

    /// <summary>A value could not be counted.</summary>
    Lost,
}
