namespace SolarEconomics.Charts;

/// <summary>Choices of the chart of many draws.</summary>
public sealed record ChancesChartOptions : ChartOptions
{
    /// <summary>Bars over the range of amounts. Range: 10 to 100. Default: 40.</summary>
    public int Bars { get; init; } = 40;
}
