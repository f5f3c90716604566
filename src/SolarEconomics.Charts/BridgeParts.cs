namespace SolarEconomics.Charts;

/// <summary>Which part of a correction a bridge draws. Both kinds sum to the same end.</summary>
public enum BridgeParts
{
    /// <summary>The part in the printed order: each correction on top of those before it.</summary>
    PrintedOrder,

    /// <summary>The average over all orders (Shapley).</summary>
    AverageOfAllOrders,
}
