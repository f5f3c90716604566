using NodaTime;

namespace SolarEconomics;

/// <summary>One channel's energy on a billing grid, and the share of each interval that its readings cover.</summary>
internal sealed record LaidChannel(double[] Kwh, double[] Covered)
{
    /// <summary>Adds to what is not covered the mean of the covered time at the same time of day; of all where there is none.</summary>
    internal void FillByTimeOfDay(IReadOnlyList<LocalTime> times)
    {
        var sums = new Dictionary<LocalTime, (double Kwh, double Covered)>();
        for (var i = 0; i < Kwh.Length; i++)
        {
            var (kwh, covered) = sums.GetValueOrDefault(times[i]);
            sums[times[i]] = (kwh + Kwh[i], covered + Covered[i]);
        }
        var all = Kwh.Sum() / Covered.Sum();
        for (var i = 0; i < Kwh.Length; i++)
        {
            var (kwh, covered) = sums[times[i]];
            Kwh[i] += (1 - Covered[i]) * (covered > 0 ? kwh / covered : all);
        }
    }
}
