namespace SolarEconomics.Solvers;

/// <summary>What a run's plant could do in each interval, every part at its most favourable. Unit: kWh.</summary>
internal sealed class RunLimits
{
    private readonly Conditions _conditions;
    private readonly EnergySystem _system;
    private readonly Battery _battery;
    private readonly bool _isPriced;

    internal RunLimits(EnergyFlows run, BestPossibleOptions options)
    {
        (Run, _conditions, _system) = (run, run.Conditions, run.System);
        _battery = _system.Battery ?? new Battery { UsableKwh = 0 };
        _isPriced = options.UnservedPricePerKwh is not null;
        Costs = new RunCosts(run, options);
        Supply = BusSupply.Of(_conditions);
        Waiting = [.. _conditions.Deferrable.Select((load, k) => new WaitingLimits(load, run.Time, run.Deferrable[k]))];
        LeastStoredKwh = LeastStored();
    }

    internal EnergyFlows Run { get; }

    internal RunCosts Costs { get; }

    internal BusSupply Supply { get; }

    internal IReadOnlyList<WaitingLimits> Waiting { get; }

    internal Battery Battery => _battery;

    internal Converter Converter => _system.Converter;

    internal double LeastStoredKwh { get; }

    internal double Hours(int i) => Run.Time.Hours[i];

    internal double UseKwh(int i) => _conditions.Load.Kwh[i];

    internal double StandbyKwh(int i) => _system.StandbyW / 1000 * Hours(i);

    /// <summary>With a grid the standby is always served, as it comes first; on an island or at a weak connection it may not be, and is let go.</summary>
    internal double LeastStandbyKwh(int i) => MostImportKwh(i) >= StandbyKwh(i) ? StandbyKwh(i) : 0;

    /// <summary>Whether the whole plant stands still because the grid is out.</summary>
    internal bool IsDark(int i) => GridIsOut(i) && !_system.Grid.RunsInOutages;

    internal double MostImportKwh(int i) => GridIsOut(i) ? 0 : Times(_system.Grid.MostImportKw, i);

    internal double MostExportKwh(int i) => GridIsOut(i) ? 0
        : Times(_conditions.MostExportKw.IsEmpty ? _system.Grid.MostExportKw : Math.Min(_system.Grid.MostExportKw, _conditions.MostExportKw.Span[i]), i);

    internal double MostToAcKwh(int i) => Times(Converter.MostToAcKw, i);

    internal double MostToDcKwh(int i) => Times(Converter.MostToDcKw, i);

    internal double MostChargeKwh(int i) => IsColdOrHot(i, t => t.MayCharge(CellC(i))) ? 0
        : Math.Min(Times(_battery.MostChargeKw, i), _battery.UsableKwh / _battery.ChargeEfficiency);

    /// <summary>Equalising is a loss that pays where import is paid for: it may then happen at any time.</summary>
    internal double MostEqualiseKwh(int i) => _battery.Equalising is { } plan && Costs.Import[i] < 0 ? plan.Kw * Hours(i) : 0;

    internal double MostDischargeKwh(int i) => IsColdOrHot(i, t => t.MayDischarge(CellC(i))) ? 0
        : Math.Min(Times(_battery.MostDischargeKw, i), _battery.UsableKwh * _battery.DischargeEfficiency);

    internal double MostGeneratorKwh(int i) => _system.Generator is not { } generator || generator.IsQuietAt(Run.Time.Clock.MinuteOfDay[i]) ? 0 : generator.RatedKw * Hours(i);

    /// <summary>Without a price, what the control left unserved in that interval; with one, all wanted use.</summary>
    internal double MostUnservedKwh(int i)
    {
        if (_isPriced) return UseKwh(i) + Waiting.Sum(w => w.MostKwh(i) + w.MostLateKwh(i));
        // What a waiting load gave up was asked of nobody in that interval.
        var unserved = Run[FlowPath.Unserved][i];
        foreach (var outcome in Run.Deferrable) unserved -= outcome.GivenUpKwh.Span[i];
        return Math.Max(0, unserved);
    }

    /// <summary>The reserve is a floor only where no outage lets it be used and the run began above it; what is lost at rest may go below.</summary>
    private double LeastStored()
    {
        for (var i = 0; i < Run.Time.Count; i++)
            if (GridIsOut(i)) return 0;
        var hours = 0.0;
        foreach (var h in Run.Time.Hours) hours += h;
        return Run.StoredKwh[0] >= _battery.ReserveKwh ? _battery.ReserveKwh * _battery.LeftAfter(hours) : 0;
    }

    private bool GridIsOut(int i) => _system.Grid.IsOffGrid || (!_conditions.GridIsOut.IsEmpty && _conditions.GridIsOut.Span[i]);

    private double CellC(int i) => _conditions.BatteryC.Span[i];

    private bool IsColdOrHot(int i, Func<TemperatureLimits, bool> may) => !_conditions.BatteryC.IsEmpty && _battery.Temperatures is { } limits && !may(limits);

    private double Times(double kw, int i) => double.IsPositiveInfinity(kw) ? kw : kw * Hours(i);
}
