namespace SolarEconomics.Charts;

/// <summary>Choices of the tornado chart.</summary>
public sealed record TornadoChartOptions : ChartOptions
{
    /// <summary>Bars drawn at most, the longest first. Range: 1 to 30. Default: 10; the table behind the picture has all.</summary>
    public int MostBars { get; init; } = 10;
}
