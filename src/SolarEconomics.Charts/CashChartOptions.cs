namespace SolarEconomics.Charts;

/// <summary>Choices of the cash chart.</summary>
public sealed record CashChartOptions : ChartOptions
{
    /// <summary>Whether the straight-line position stands beside the honest one, dashed. Default: yes.</summary>
    public bool StraightLine { get; init; } = true;
}
