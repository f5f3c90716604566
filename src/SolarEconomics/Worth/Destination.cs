namespace SolarEconomics;

/// <summary>Where a kWh of generation went. One meaning, one colour: page, charts and reports use the same token for each.</summary>
public enum Destination
{
    /// <summary>Used on site in the interval in which it was made.</summary>
    UsedDirectly,

    /// <summary>Used on site later, out of the battery.</summary>
    UsedFromStorage,

    /// <summary>Sent to the grid.</summary>
    Exported,

    /// <summary>Lost in conversion, storage or standby.</summary>
    Lost,

    /// <summary>Not made although the sun was there, as far as the records tell.</summary>
    Curtailed,
}
