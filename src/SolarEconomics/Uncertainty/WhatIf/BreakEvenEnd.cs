namespace SolarEconomics;

/// <summary>How the search for a break-even ended.</summary>
public enum BreakEvenEnd
{
    /// <summary>One value at which the amount is 0.</summary>
    Found,

    /// <summary>Several values: the amount crosses 0 more than once.</summary>
    Several,

    /// <summary>None: the amount is above 0 wherever it was looked at.</summary>
    AlwaysAbove,

    /// <summary>None: the amount is below 0 wherever it was looked at.</summary>
    AlwaysBelow,
}
