namespace SolarEconomics;

/// <summary>What a correction of a bridge corrects. No effect stands in both bridges.</summary>
public enum CorrectionKind
{
    /// <summary>To date: counters of different measurement points, opening values and lost months.</summary>
    MeasurementPoint,

    /// <summary>To date: exported, stored and lost kWh did not avoid a purchase when made.</summary>
    Destination,

    /// <summary>To date: the plant's own standby is its load.</summary>
    Standby,

    /// <summary>To date: the price in force at the time instead of one price.</summary>
    PriceInForce,

    /// <summary>To date: tax that is reclaimed was never saved.</summary>
    Tax,

    /// <summary>To date: what running and repairing the plant cost.</summary>
    RunningCosts,

    /// <summary>Outlook: modules yield less with age.</summary>
    Ageing,

    /// <summary>Outlook: parts that will have to be replaced.</summary>
    Replacement,

    /// <summary>Outlook: prices move.</summary>
    PricePath,

    /// <summary>Outlook: money later is worth less than money now.</summary>
    TimeValue,
}
