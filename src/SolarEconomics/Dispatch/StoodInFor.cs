namespace SolarEconomics;

/// <summary>What a kWh that arrived somewhere stood in for.</summary>
public enum StoodInFor
{
    /// <summary>A kWh that would have been bought at that hour.</summary>
    Import,

    /// <summary>Nothing: it was paid as feed-in.</summary>
    FeedIn,

    /// <summary>A kWh of the generator: its fuel.</summary>
    Fuel,

    /// <summary>Nothing at all.</summary>
    Nothing,
}
