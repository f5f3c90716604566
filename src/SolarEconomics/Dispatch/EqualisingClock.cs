using NodaTime;

namespace SolarEconomics;

/// <summary>Counts the days to the next equalising charge of a run, and how far the one at work has come.</summary>
internal sealed class EqualisingClock
{
    /// <summary>A battery within this share of full is full: self-discharge takes a little in every interval.</summary>
    private const double NearlyFull = 1e-3;

    private const double DustKwh = 1e-9;
    private readonly Equalising? _plan;
    private readonly Timeline _time;
    private readonly double _fullKwh;
    private readonly List<EqualisingCharge> _charges = [];
    private double _hoursSince;
    private double _givenKwh;
    private double _waitedHours;
    private int _dueAt = -1;

    internal EqualisingClock(Battery battery, Timeline time)
    {
        (_plan, _time) = (battery.UsableKwh > 0 ? battery.Equalising : null, time);
        _fullKwh = battery.UsableKwh * (1 - NearlyFull);
        _hoursSince = (_plan?.DaysSinceAtStart ?? 0) * 24;
    }

    internal bool IsDue => _dueAt >= 0;

    /// <summary>Days since the last complete one, for the run that follows; a century says as much as more.</summary>
    internal double DaysSince => Math.Min(_hoursSince / 24, Equalising.MostDaysSince);

    /// <summary>Looks whether one is due as an interval begins.</summary>
    internal void Look(int i)
    {
        // Short intervals add up to a day but for their last digits.
        if (_plan is null || IsDue || _hoursSince < (_plan.EveryDays * 24) - 1e-6) return;
        (_dueAt, _givenKwh, _waitedHours) = (i, 0, 0);
    }

    /// <summary>The most that may go in beyond full in an interval that begins with some charge. Unit: kWh at the terminals.</summary>
    internal double MostKwh(double storedKwh, double hours) =>
        _plan is null || !IsDue || storedKwh < _fullKwh ? 0 : Math.Min(_plan.Kw * hours, _plan.NeededKwh - _givenKwh);

    /// <summary>The interval is over, and some energy went in beyond full.</summary>
    internal void Pass(int i, double hours, double givenKwh)
    {
        if (_plan is null) return;
        _hoursSince += hours;
        if (!IsDue) return;
        _waitedHours += hours;
        _givenKwh += givenKwh;
        if (_givenKwh < _plan.NeededKwh - DustKwh) return;
        _charges.Add(new EqualisingCharge(_time.LocalStartOf(_dueAt), EndOf(i), _waitedHours / 24, _givenKwh));
        (_hoursSince, _dueAt) = (0, -1);
    }

    private LocalDateTime EndOf(int i) => (i + 1 < _time.Count ? _time.StartOf(i + 1) : _time.End).InZone(_time.Zone).LocalDateTime;

    /// <summary>All of the run, with the one still waiting at its end.</summary>
    internal IReadOnlyList<EqualisingCharge> Charges() =>
        IsDue ? [.. _charges, new EqualisingCharge(_time.LocalStartOf(_dueAt), null, _waitedHours / 24, _givenKwh)] : _charges;
}
