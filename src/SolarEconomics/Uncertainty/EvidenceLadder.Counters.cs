namespace SolarEconomics;

/// <content>The ends of the lowest rung: lifetime counters and prices, nothing of the grid or the battery.</content>
internal sealed partial class EvidenceLadder
{
    /// <summary>With import and export unknown a kWh that was made or discharged is worth the better or the worse of the two prices, so that each counter's kWh are laid by themselves.</summary>
    private EnergySet CountersEnd(bool lowEnd)
    {
        var count = _records.Grid.Count;
        var sign = lowEnd ? -1 : 1;
        var worth = new double[count];
        for (var i = 0; i < count; i++) worth[i] = Math.Max(sign * _prices.Import[i], sign * _prices.Export[i]);
        var generation = new double[count];
        var byDevice = new Dictionary<string, double[]>(StringComparer.Ordinal);
        foreach (var record in _records.Generation)
        {
            var kwh = CountedEnd(record, worth);
            byDevice[record.Device.Name] = kwh;
            for (var i = 0; i < count; i++) generation[i] += kwh[i];
        }
        var (charge, discharge) = (new double[count], new double[count]);
        LayUnrecordedBattery(sign, worth, charge, discharge);
        var export = new double[count];
        var import = Import();
        for (var i = 0; i < count; i++)
        {
            var given = generation[i] + discharge[i];
            export[i] = sign * _prices.Export[i] > sign * _prices.Import[i] ? given : 0;
            import[i] = Math.Max(import[i], Math.Max(charge[i] - generation[i], export[i] + charge[i] + _records.StandbyKwh[i] - given));
        }
        return new EnergySet(_records.Grid, generation, import, export, charge, discharge, _records.StandbyKwh) { ByDevice = byDevice };
    }

    private double[] CountedEnd(GenerationRecord record, double[] worth)
    {
        var (toAcLow, toAcHigh) = (record.Device.ToAcLow, record.Device.ToAcHigh);
        var counted = worth.Select(w => Math.Max(toAcLow * w, toAcHigh * w)).ToArray();
        var kwh = new double[worth.Length];
        foreach (var gap in GapGroups.Of(record, new bool[kwh.Length], onePair: true, _records.Grid, _records.Site.Zone, _doubtful))
            Allotment.LayBetween(gap.LowKwh, gap.HighKwh, gap.Intervals, record.CeilingKwh, counted, kwh);
        for (var i = 0; i < kwh.Length; i++) kwh[i] *= worth[i] > 0 ? toAcHigh : toAcLow;
        return kwh;
    }

    private void LayUnrecordedBattery(int sign, double[] worth, double[] charge, double[] discharge)
    {
        if (_records.BatteryKwh <= 0) return;
        var perDay = (int)Math.Round(24 / _records.Grid.StepHours);
        var cost = _prices.Import.Select(p => sign * p).ToArray();
        for (var from = 0; from < charge.Length; from += perDay)
        {
            var to = Math.Min(from + perDay, charge.Length);
            BatteryDay.Lay(from, to, BatteryRoomKwh, CyclesPerDay * _records.BatteryKwh, 1 - WorstLoss, cost, worth, charge, discharge);
        }
    }
}
