namespace SolarEconomics;

/// <summary>Days of a battery in one calendar month, by what they took out of it: how much of them a smaller battery loses.</summary>
/// <remarks>Equation per day, D its discharge, C the capacity of the records, q the share of it that is left: lost = max(0, D − q · max(C, D)). A day that filled the battery
/// loses its share, a day that did not loses only what no longer fits. Running sums by D make a month two searches, however many days it has.</remarks>
internal sealed class StoredDays
{
    private readonly double[] _discharge;
    private readonly StoredDay[] _sums;
    private readonly StoredDay[] _sumsByKwh;

    /// <param name="hours">Hours on record.</param>
    /// <param name="days">Its days; those that took nothing out lose nothing.</param>
    internal StoredDays(double hours, IEnumerable<StoredDay> days)
    {
        Hours = hours;
        var sorted = days.Where(d => d.DischargeKwh > 0).OrderBy(d => d.DischargeKwh).ToList();
        _discharge = [.. sorted.Select(d => d.DischargeKwh)];
        (_sums, _sumsByKwh) = (new StoredDay[sorted.Count + 1], new StoredDay[sorted.Count + 1]);
        for (var k = 0; k < sorted.Count; k++)
        {
            _sums[k + 1] = _sums[k] + sorted[k];
            _sumsByKwh[k + 1] = _sumsByKwh[k] + (sorted[k] * (1 / sorted[k].DischargeKwh));
        }
    }

    internal double Hours { get; }

    internal StoredDay Total => _sums[^1];

    /// <summary>What is lost where the battery holds a share of what it held in the records.</summary>
    /// <param name="recordedKwh">Capacity in the records.</param>
    /// <param name="share">Share of it that is left. From 1 on nothing is lost.</param>
    internal StoredDay Lost(double recordedKwh, double share)
    {
        if (share >= 1) return default;
        var (fits, full) = (First(share * recordedKwh), First(recordedKwh));
        var between = _sums[full] + (_sums[fits] * -1) + ((_sumsByKwh[full] + (_sumsByKwh[fits] * -1)) * (-share * recordedKwh));
        return between + ((_sums[^1] + (_sums[full] * -1)) * (1 - share));
    }

    /// <summary>Number of days that took out less.</summary>
    private int First(double kwh)
    {
        var at = Array.BinarySearch(_discharge, kwh);
        if (at < 0) return ~at;
        while (at > 0 && _discharge[at - 1] == kwh) at--;
        return at;
    }
}
