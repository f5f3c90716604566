namespace SolarEconomics;

/// <summary>Specific yield of one calendar month over the years of a record.</summary>
/// <param name="Month">1 is January.</param>
/// <param name="MeanKwhPerKwp">Mean over the years. Unit: kWh/kWp a month.</param>
/// <param name="LowKwhPerKwp">Poorest year.</param>
/// <param name="HighKwhPerKwp">Best year.</param>
/// <param name="Years">Years in which this month could be told.</param>
public sealed record MonthYield(int Month, double MeanKwhPerKwp, double LowKwhPerKwp, double HighKwhPerKwp, int Years)
{
    /// <summary>The same month times a bare number.</summary>
    internal MonthYield Times(double factor) =>
        this with { MeanKwhPerKwp = MeanKwhPerKwp * factor, LowKwhPerKwp = LowKwhPerKwp * factor, HighKwhPerKwp = HighKwhPerKwp * factor };
}
