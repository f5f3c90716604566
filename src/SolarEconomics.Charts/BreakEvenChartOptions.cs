namespace SolarEconomics.Charts;

/// <summary>Choices of the chart of a break-even line.</summary>
public sealed record BreakEvenChartOptions : ChartOptions
{
    /// <summary>Whether the side that gains is filled. Default: true.</summary>
    public bool FillsGains { get; init; } = true;
}
