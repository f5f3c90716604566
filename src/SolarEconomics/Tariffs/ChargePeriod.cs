namespace SolarEconomics;

/// <summary>What a fixed charge is counted by.</summary>
public enum ChargePeriod
{
    /// <summary>Each billing day.</summary>
    Day,

    /// <summary>Each calendar month; part of a month by its days.</summary>
    Month,

    /// <summary>Each year; part of a year by its days, 365 or 366.</summary>
    Year,

    /// <summary>Each bill; part of a billing period by its days.</summary>
    Bill,
}
