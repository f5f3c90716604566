namespace SolarEconomics;

/// <summary>Faults that make two records of one energy differ.</summary>
public enum DisagreementKind
{
    /// <summary>One clock is ahead of the other.</summary>
    ClockShift,

    /// <summary>One is in units a thousand times the other's.</summary>
    UnitFactor,

    /// <summary>One counts a device that the other does not.</summary>
    MissingDevice,

    /// <summary>One counts what the other counts with the opposite sign.</summary>
    Sign,

    /// <summary>A typed reading of a counter has two digits swapped.</summary>
    SwappedDigits,

    /// <summary>A counter was reset, and what it counted before is not known.</summary>
    Reset,
}
