namespace SolarEconomics;

/// <summary>One run of a system through its conditions under a control: looks, asks, checks, settles, interval after interval.</summary>
internal sealed partial class DispatchRun
{
    private readonly EnergySystem _system;
    private readonly Conditions _conditions;
    private readonly Battery _battery;
    private readonly BusSupply _supply;
    private readonly DeferrableQueue _waiting;
    private readonly EqualisingClock _equalising;
    private readonly Situation _now;
    private readonly double[] _hours;
    private readonly double[] _useKwh;
    private readonly double[][] _columns;
    private readonly double[] _storedKwh;
    private double _stored;
    private double _mostIntoCells;
    private double _peakKw;
    private int _peakMonth = -1;
    private bool _generatorRan;
    private double _restHours = double.NaN;
    private double _restLeft;

    internal DispatchRun(EnergySystem system, Conditions conditions)
    {
        ConditionsCheck.Demand(system, conditions);
        (_system, _conditions) = (system, conditions);
        _battery = system.Battery ?? new Battery { UsableKwh = 0 };
        var time = conditions.Time;
        _hours = time.HoursArray;
        _useKwh = conditions.Load.TotalArray;
        _supply = BusSupply.Of(conditions);
        _waiting = new DeferrableQueue(conditions.Deferrable, time);
        _equalising = new EqualisingClock(_battery, time);
        _now = new Situation(conditions, _battery, system.Converter);
        _columns = EnergyFlows.NewColumns(time.Count);
        _storedKwh = new double[time.Count + 1];
    }

    internal EnergyFlows Run(Control control, IProgress<double>? progress, CancellationToken cancellation)
    {
        const int Breath = 1024;
        var count = _hours.Length;
        _stored = _storedKwh[0] = _battery.StoredAtStartKwh;
        var wantedKwh = new double[count];
        for (var i = 0; i < count; i++)
        {
            if (i % Breath == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                progress?.Report((double)i / count);
            }
            _equalising.Look(i);
            Rest(i);
            if (IsDark(i)) SettleDark(i);
            else
            {
                Observe(i);
                Settle(i, Checked(control.Decide(_now), control, i), control);
            }
            _equalising.Pass(i, _hours[i], Column(FlowPath.EqualisingLost)[i]);
            _storedKwh[i + 1] = _stored;
            wantedKwh[i] = _useKwh[i];
        }
        var outcomes = _waiting.Outcomes(wantedKwh, Column(FlowPath.Unserved));
        progress?.Report(1);
        return new EnergyFlows(_system, _conditions, control.Name, _supply, wantedKwh, outcomes, _columns, _storedKwh)
        {
            Equalising = _equalising.Charges(), DaysSinceEqualised = _equalising.DaysSince,
        };
    }

    /// <summary>An ordinary plant switches off with the grid.</summary>
    private bool IsDark(int i) => GridIsOut(i) && !_system.Grid.RunsInOutages;

    private bool GridIsOut(int i) => _system.Grid.IsOffGrid || (!_conditions.GridIsOut.IsEmpty && _conditions.GridIsOut.Span[i]);

    /// <summary>What the battery loses as it stands, before anything else happens in the interval.</summary>
    private void Rest(int i)
    {
        if (_battery.SelfDischargePerMonth == 0) return;
        if (_hours[i] != _restHours) (_restHours, _restLeft) = (_hours[i], _battery.LeftAfter(_hours[i]));
        var left = _stored * _restLeft;
        Column(FlowPath.SelfDischargeLost)[i] = _stored - left;
        _stored = left;
    }

    private void SettleDark(int i)
    {
        _waiting.Look(i);
        _waiting.Run(i, 0);
        Column(FlowPath.ArrayCurtailed)[i] = _supply.PotentialKwh(i);
        Column(FlowPath.Unserved)[i] = _useKwh[i];
        _generatorRan = false;
    }

    private double[] Column(FlowPath path) => _columns[(int)path];
}
