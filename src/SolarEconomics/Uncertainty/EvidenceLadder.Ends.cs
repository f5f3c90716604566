using NodaTime;

namespace SolarEconomics;

/// <summary>The two ends of the highest rung as full sets of flows, to be billed with all rounding.</summary>
internal sealed partial class EvidenceLadder
{
    /// <summary>The flows of the lowest and of the highest value that the records allow. Without bounded generation both hold just what was exported.</summary>
    internal (EnergySet Low, EnergySet High) Ends()
    {
        var import = Import();
        return (End(import, lowEnd: true), End(import, lowEnd: false));
    }

    private EnergySet End(double[] import, bool lowEnd)
    {
        var count = _records.Grid.Count;
        var generation = new double[count];
        var worth = new double[count];
        for (var i = 0; i < count; i++)
        {
            worth[i] = ExportIsKnown(i, EvidenceRung.IntervalFlows) ? _prices.Import[i]
                : lowEnd ? Math.Min(_prices.Import[i], _prices.Export[i])
                : Math.Max(_prices.Import[i], _prices.Export[i]);
        }
        var byDevice = new Dictionary<string, double[]>(StringComparer.Ordinal);
        foreach (var device in _records.Generation)
        {
            var kwh = GenerationAtEnd(device, Highest, worth, lowEnd);
            byDevice[device.Device.Name] = kwh;
            for (var i = 0; i < count; i++) generation[i] += kwh[i];
        }
        var charge = KnownOrZero(_records.Charge);
        var discharge = KnownOrZero(_records.Discharge);
        var export = new double[count];
        for (var i = 0; i < count; i++)
        {
            export[i] = ExportIsKnown(i, EvidenceRung.IntervalFlows) ? _records.Export!.Kwh[i]
                : (_prices.Import[i] > _prices.Export[i]) == lowEnd ? Math.Max(0, generation[i] + discharge[i] - charge[i])
                : 0;
            // The load cannot be negative: what left the home must have come from somewhere.
            if (ImportIsKnown(i) || !_records.GenerationIsBounded)
                generation[i] = Math.Max(generation[i], export[i] + charge[i] - discharge[i] - import[i]);
        }
        return new EnergySet(_records.Grid, generation, import, export, charge, discharge, _records.StandbyKwh) { ByDevice = byDevice };
    }

    private bool ImportIsKnown(int i) => _records.Import is { } import && import.Known[i];

    private double[] KnownOrZero(GridSeries? series)
    {
        var kwh = new double[_records.Grid.Count];
        if (series is null) return kwh;
        for (var i = 0; i < kwh.Length; i++) if (series.Known[i]) kwh[i] = series.Kwh[i];
        return kwh;
    }

    /// <summary>Import as recorded; where it is missing, the month's mean at that time of day stands in. It is in both bills and drops out of their difference.</summary>
    private double[] Import()
    {
        var kwh = new double[_records.Grid.Count];
        if (_records.Import is not { } import)
        {
            // Nothing recorded: the plant's own standby must still come from somewhere.
            _records.StandbyKwh.CopyTo(kwh, 0);
            return kwh;
        }
        var perDay = (int)Math.Max(1, Math.Round(Duration.FromDays(1) / _records.Grid.Step));
        var months = _prices.MonthOf.Length == 0 ? 0 : _prices.MonthOf[^1] + 1;
        var sums = new double[months * perDay];
        var counts = new int[months * perDay];
        for (var i = 0; i < kwh.Length; i++)
        {
            if (!import.Known[i]) continue;
            var slot = (_prices.MonthOf[i] * perDay) + (i % perDay);
            sums[slot] += import.Kwh[i];
            counts[slot]++;
        }
        for (var i = 0; i < kwh.Length; i++)
        {
            var slot = (_prices.MonthOf[i] * perDay) + (i % perDay);
            kwh[i] = import.Known[i] ? import.Kwh[i] : counts[slot] > 0 ? sums[slot] / counts[slot] : _records.StandbyKwh[i];
        }
        return kwh;
    }
}
