namespace SolarEconomics.Charts;

/// <summary>Choices of the chart of months.</summary>
public sealed record MonthsChartOptions : ChartOptions
{
    /// <summary>Whether energy bought from the grid is drawn too, as a line. Default: no; the chart is about generation.</summary>
    public bool Imported { get; init; }
}
