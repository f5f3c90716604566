using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Choices of the chart of a battery.</summary>
public sealed record BatteryChartOptions : ChartOptions
{
    /// <summary>The first day drawn. Default: three days with the one in the middle on which the battery gave most.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Days drawn. Range: 1 or more. Default: 3. From 15 on each day is one bar from its lowest to its highest charge.</summary>
    public int Days { get; init => field = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(Days), value, "Expected 1 day or more."); } = 3;
}
