namespace SolarEconomics;

/// <summary>What becomes of a stamp that the wall clock skipped in spring.</summary>
public enum SkippedHour
{
    /// <summary>The row is reported with its energy and not counted.</summary>
    Report,

    /// <summary>The stamp is moved on by the length of the jump, as if the device's clock had been late; still reported.</summary>
    Forward,
}
