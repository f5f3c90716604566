namespace SolarEconomics.Charts;

/// <summary>Choices of the chart of expected against measured.</summary>
public sealed record ExpectedChartOptions : ChartOptions
{
    /// <summary>The days to draw. Default: <see langword="null"/>, three weeks around the event that lost most, or the last sixty days where nothing was lost.</summary>
    public DateSpan? Days { get; init; }
}
