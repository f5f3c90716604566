namespace SolarEconomics;

/// <summary>From which day a workbook counts the days of dates that stand as bare numbers.</summary>
/// <remarks>Source: readings-serial.</remarks>
public enum SerialDays
{
    /// <summary>The user has not said; such dates are refused with both readings.</summary>
    NotToldYet,

    /// <summary>From 1900, as nearly all workbooks: 45413 is 1 May 2024.</summary>
    From1900,

    /// <summary>From 1904, as some older workbooks: 43951 is 1 May 2024.</summary>
    From1904,
}
