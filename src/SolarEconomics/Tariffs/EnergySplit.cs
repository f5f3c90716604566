namespace SolarEconomics;

/// <summary>How the energy of a bill is split between two versions of a tariff where the second begins within it.</summary>
public enum EnergySplit
{
    /// <summary>By what was metered on the days of each.</summary>
    AsMetered,

    /// <summary>In proportion to the days of each, rate by rate, whatever was metered when: as where nobody reads the meter on the day of the change.</summary>
    ByDays,
}
