namespace SolarEconomics;

/// <summary>What a kWh was worth in each interval: bought and exported, as the owner pays and is paid. Unit: currency per kWh.</summary>
/// <param name="Import">Import price with the tax that is not reclaimed.</param>
/// <param name="Export">Export price.</param>
/// <param name="MonthOf">Index of the local calendar month of each interval, ascending from 0.</param>
internal sealed record EvidencePrices(double[] Import, double[] Export, int[] MonthOf)
{
    /// <summary>Worst rounding of a month's two bills: six lines each, half a cent a line.</summary>
    internal double RoundingSlack => 0.06 * (MonthOf.Length == 0 ? 0 : MonthOf[^1] + 1);
}
