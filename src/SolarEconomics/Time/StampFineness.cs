namespace SolarEconomics;

/// <summary>How much of a time a text states.</summary>
internal enum StampFineness
{
    /// <summary>A time of day.</summary>
    Time,

    /// <summary>A calendar day.</summary>
    Day,

    /// <summary>A calendar month.</summary>
    Month,
}
