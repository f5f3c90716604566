namespace SolarEconomics;

/// <summary>What another tariff saves per day of each calendar month, for the plant as recorded and for one that yields less or more.</summary>
/// <remarks>Whole bills at a few yields, straight lines between them: exact for prices by the kWh, near for blocks. Immutable.</remarks>
internal sealed class TariffSaving
{
    private static readonly double[] s_yields = [0.6, 0.8, 1, 1.2];
    private readonly double[][] _perDay;

    internal TariffSaving(OutlookRecord record, Tariff tariff)
    {
        var worth = record.Worth;
        var then = new BillDifference(TariffHistory.Of(tariff).OnlyLatest().On(worth.Flows.Grid, worth.Site.Zone), worth.Site.TaxReclaimedShare);
        var now = new BillDifference(record.LatestPlan, worth.Site.TaxReclaimedShare);
        _perDay = [.. s_yields.Select(yield => At(worth.Flows, yield, now, then))];
    }

    /// <summary>Saved per day.</summary>
    /// <param name="month">Calendar month, 1 to 12.</param>
    /// <param name="yield">Yield against the records' mean.</param>
    internal double PerDay(int month, double yield)
    {
        var k = Math.Clamp(Array.FindLastIndex(s_yields, y => y <= yield), 0, s_yields.Length - 2);
        var along = (yield - s_yields[k]) / (s_yields[k + 1] - s_yields[k]);
        return _perDay[k][month - 1] + (along * (_perDay[k + 1][month - 1] - _perDay[k][month - 1]));
    }

    /// <summary>What the recorded months' bills come down by; a month without records takes the mean.</summary>
    private static double[] At(EnergySet flows, double yield, BillDifference now, BillDifference then)
    {
        var (importKwh, exportKwh) = (new double[flows.Grid.Count], new double[flows.Grid.Count]);
        for (var i = 0; i < importKwh.Length; i++)
        {
            var usedFromPlant = Math.Max(0, flows.GenerationKwh[i] + flows.DischargeKwh[i] - flows.ChargeKwh[i] - flows.ExportKwh[i]);
            var needed = flows.ImportKwh[i] + ((1 - yield) * usedFromPlant);
            importKwh[i] = Math.Max(0, needed);
            exportKwh[i] = (yield * flows.ExportKwh[i]) + Math.Max(0, -needed);
        }
        var saved = new double[12];
        var days = new int[12];
        foreach (var ((period, due), (_, dueThen)) in now.Dues(importKwh, exportKwh).Zip(then.Dues(importKwh, exportKwh)))
        {
            saved[period.Start.Month - 1] += (double)(due - dueThen);
            days[period.Start.Month - 1] += period.Days;
        }
        var mean = saved.Sum() / Math.Max(1, days.Sum());
        return [.. saved.Select((sum, month) => days[month] > 0 ? sum / days[month] : mean)];
    }
}
