namespace SolarEconomics;

/// <summary>The regular distance between the payments of a loan, as the annual percentage rate counts it. Source: money-11.</summary>
public enum UnitPeriod
{
    /// <summary>A calendar month; odd days count as thirtieths. 12 a year.</summary>
    Month,

    /// <summary>Half a month; odd days count as fifteenths. 24 a year.</summary>
    HalfMonth,

    /// <summary>A week; odd days count as sevenths. 52 a year.</summary>
    Week,
}
