namespace SolarEconomics.Charts;

/// <summary>Choices of the chart of flows.</summary>
public sealed record FlowsChartOptions : ChartOptions
{
    /// <summary>Which side is drawn. Default: where the generation went.</summary>
    public FlowSide Side { get; init; }

    /// <summary>Whether a bar is a calendar year instead of a month. Default: a month.</summary>
    public bool ByYear { get; init; }
}
