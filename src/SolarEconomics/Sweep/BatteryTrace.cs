namespace SolarEconomics;

/// <summary>One year of a single battery under self-consumption, interval by interval, in columns that can be used again and again. Unit: kWh.</summary>
/// <param name="ImportKwh">From the grid.</param>
/// <param name="ExportKwh">To the grid.</param>
/// <param name="StoredKwh">Inside the cells at the end of each interval.</param>
public sealed record BatteryTrace(double[] ImportKwh, double[] ExportKwh, double[] StoredKwh)
{
    /// <summary>Room for a number of intervals.</summary>
    /// <param name="count">Intervals.</param>
    public static BatteryTrace For(int count) => new(new double[count], new double[count], new double[count]);
}
