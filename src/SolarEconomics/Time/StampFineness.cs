namespace SolarEconomics;

/// <summary>How much of a time a text states.</summary>
internal enum StampFineness
{
    /// <summary>A time of day.</summary>
    Time,

    /// <summary>A calendar day.</summary>
    Day,

    /// <summary>A week of ISO 8601, from Monday.</summary>
    Week,

    /// <summary>A calendar month.</summary>
    Month,

    /// <summary>A calendar year.</summary>
    Year,
}
