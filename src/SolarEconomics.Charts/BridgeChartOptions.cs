namespace SolarEconomics.Charts;

/// <summary>Choices of the bridge chart.</summary>
public sealed record BridgeChartOptions : ChartOptions
{
    /// <summary>Which part of each correction is drawn. Default: the printed order, as the bridge lists it.</summary>
    public BridgeParts Parts { get; init; } = BridgeParts.PrintedOrder;
}
