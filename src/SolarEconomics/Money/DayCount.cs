namespace SolarEconomics;

/// <summary>How days become a part of a year. Source: money-4.</summary>
public enum DayCount
{
    /// <summary>Actual days over 365, leap year or not. The default of dated returns.</summary>
    Actual365,

    /// <summary>Actual days over 360.</summary>
    Actual360,

    /// <summary>Days in ordinary years over 365 plus days in leap years over 366 (ISDA).</summary>
    ActualActual,

    /// <summary>Months of 30 days and years of 360, the 31st taken as the 30th (European).</summary>
    Thirty360European,

    /// <summary>Months of 30 days and years of 360, with the bond market's rule for a 31st and for the end of February (United States).</summary>
    Thirty360Us,
}
