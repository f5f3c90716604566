namespace SolarEconomics;

/// <content>What the control is told.</content>
internal sealed partial class DispatchRun
{
    private void Observe(int i)
    {
        var now = _now;
        var (hours, converter) = (_hours[i], _system.Converter);
        now.Interval = i;
        now.Hours = hours;
        now.GridIsOut = GridIsOut(i);
        now.MostImportKwh = now.GridIsOut ? 0 : Limit(_system.Grid.MostImportKw, hours);
        now.MostExportKwh = now.GridIsOut ? 0 : Limit(ExportLimitKw(i), hours);
        now.AcGenerationKwh = _supply.AcKwh[i];
        now.DcGenerationKwh = _supply.DcKwh[i];
        now.StandbyKwh = _system.StandbyW / 1000 * hours;
        ObserveBattery(i, hours);
        now.UseKwh = _useKwh[i] - OffBySelfKwh(i);
        ObserveWaiting(i);
        var needKwh = now.UseKwh + now.StandbyKwh + now.DeferrableKwh;
        var leftAtBoardKwh = now.AcGenerationKwh - needKwh;
        var mostToAcKwh = Limit(converter.MostToAcKw, hours);
        var arraysToAcKwh = Math.Min(now.DcGenerationKwh * converter.ToAc, mostToAcKwh);
        now.SurplusKwh = leftAtBoardKwh >= 0
            ? now.DcGenerationKwh + (Math.Min(leftAtBoardKwh, Limit(converter.MostToDcKw, hours)) * converter.ToDc)
            : Math.Max(0, now.DcGenerationKwh - (Math.Min(-leftAtBoardKwh, mostToAcKwh) / converter.ToAc));
        now.ShortfallKwh = Math.Max(0, -leftAtBoardKwh - arraysToAcKwh) / converter.ToAc;
        now.MostDischargeKwh = Math.Min(now.MostDischargeKwh, (mostToAcKwh - arraysToAcKwh) / converter.ToAc);
        var toDcKwh = Limit(converter.MostToDcKw, hours);
        now.MostChargeKwh = Math.Min(now.MostChargeKwh, now.DcGenerationKwh + (toDcKwh * converter.ToDc));
        now.MostToBatteryAtBoardKwh = toDcKwh;
        now.SurplusAtBoardKwh = Math.Max(0, leftAtBoardKwh + arraysToAcKwh);
        now.ShortfallAtBoardKwh = Math.Max(0, -leftAtBoardKwh - arraysToAcKwh);
        ObserveCurtailment(arraysToAcKwh, toDcKwh);
        var spareImportKwh = now.MostImportKwh + leftAtBoardKwh;
        now.MostChargeFromGridKwh = Math.Min(now.MostChargeKwh, now.DcGenerationKwh + (Math.Clamp(spareImportKwh, 0, toDcKwh) * converter.ToDc));
        ObserveGenerator(hours);
        if (_peakMonth != now.MonthNumber) (_peakMonth, _peakKw) = (now.MonthNumber, 0);
        now.PeakImportKw = _peakKw;
    }

    /// <summary>What would be curtailed comes first from the DC arrays, which reach the battery without the converter.</summary>
    private void ObserveCurtailment(double arraysToAcKwh, double toDcKwh)
    {
        var (now, converter) = (_now, _system.Converter);
        var beyondExportKwh = Math.Max(0, now.SurplusAtBoardKwh - now.MostExportKwh);
        var beyondConverterKwh = now.DcGenerationKwh - (arraysToAcKwh / converter.ToAc);
        var throughDcKwh = Math.Min(arraysToAcKwh, beyondExportKwh);
        var fromBoardKwh = Math.Min(beyondExportKwh - throughDcKwh, toDcKwh) * converter.ToDc;
        now.OtherwiseCurtailedKwh = Math.Min(now.SurplusKwh, beyondConverterKwh + (throughDcKwh / converter.ToAc) + fromBoardKwh);
        var takenAtBoardKwh = now.ShortfallAtBoardKwh + Math.Max(0, now.MostExportKwh - now.SurplusAtBoardKwh);
        now.MostDischargeToGridKwh = Math.Min(now.MostDischargeKwh, takenAtBoardKwh / converter.ToAc);
    }

    /// <summary>Parts of the load that switch themselves off while the grid is out and the battery is low.</summary>
    private double OffBySelfKwh(int i)
    {
        if (!_now.GridIsOut) return 0;
        var off = 0.0;
        foreach (var part in _conditions.Load.Parts)
            if (_now.StoredShare < part.OffBelowShare) off += part.Kwh.Span[i];
        return off;
    }

    private void ObserveBattery(int i, double hours)
    {
        var now = _now;
        now.StoredKwh = _stored;
        now.UsableKwh = _battery.UsableKwh;
        var cellC = _conditions.BatteryC.IsEmpty ? (double?)null : _conditions.BatteryC.Span[i];
        var mayCharge = MayCharge(cellC);
        _mostIntoCells = mayCharge ? _battery.MostChargeKwh(_stored, hours) : 0;
        now.EqualisingIsDue = _equalising.IsDue;
        now.EqualiseKwh = mayCharge ? Math.Min(_equalising.MostKwh(_storedKwh[now.Interval], hours), Limit(_battery.MostChargeKw, hours) - _mostIntoCells) : 0;
        now.MostChargeKwh = _mostIntoCells + now.EqualiseKwh;
        var keptKwh = now.GridIsOut ? 0 : _battery.ReserveKwh;
        now.MostDischargeKwh = MayDischarge(cellC) ? _battery.MostDischargeKwh(_stored, keptKwh, hours) : 0;
    }

    private bool MayCharge(double? cellC) => cellC is not { } c || _battery.Temperatures is not { } limits || limits.MayCharge(c);

    private bool MayDischarge(double? cellC) => cellC is not { } c || _battery.Temperatures is not { } limits || limits.MayDischarge(c);

    /// <summary>Proposes for the waiting loads what must run now, and as much more as the generation at the board leaves.</summary>
    private void ObserveWaiting(int i)
    {
        var now = _now;
        _waiting.Look(i);
        (now.DeferrableMustKwh, now.DeferrableMayKwh) = (_waiting.MustKwh, _waiting.MayKwh);
        if (now.DeferrableMayKwh == 0)
        {
            now.DeferrableKwh = 0;
            return;
        }
        var toAcKwh = Math.Min(now.DcGenerationKwh * _system.Converter.ToAc, Limit(_system.Converter.MostToAcKw, now.Hours));
        var freeKwh = now.AcGenerationKwh + toAcKwh - now.UseKwh - now.StandbyKwh;
        now.DeferrableKwh = Math.Clamp(freeKwh, now.DeferrableMustKwh, now.DeferrableMayKwh);
    }

    private void ObserveGenerator(double hours)
    {
        var generator = _system.Generator;
        _now.GeneratorRan = _generatorRan;
        _now.MostGeneratorKwh = generator is null || generator.IsQuietAt(_now.MinuteOfDay) ? 0 : generator.RatedKw * hours;
    }

    private double ExportLimitKw(int i) => _conditions.MostExportKw.IsEmpty
        ? _system.Grid.MostExportKw
        : Math.Min(_system.Grid.MostExportKw, _conditions.MostExportKw.Span[i]);

    /// <summary>A power over some hours; no limit stays none, however short the interval.</summary>
    private static double Limit(double kw, double hours) => double.IsPositiveInfinity(kw) ? kw : kw * hours;
}
