namespace SolarEconomics;

/// <summary>How much the records tell. Each rung keeps all records of those before it.</summary>
public enum EvidenceRung
{
    /// <summary>Lifetime counters and prices.</summary>
    Counters = 1,

    /// <summary>Totals by month.</summary>
    MonthlyTotals = 2,

    /// <summary>Generation by interval.</summary>
    IntervalGeneration = 3,

    /// <summary>Import, export and generation by interval.</summary>
    IntervalFlows = 4,
}
