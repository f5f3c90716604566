namespace SolarEconomics;

/// <summary>One waiting load as a run goes on: what it still needs in time, what is late, what was given up.</summary>
internal sealed class DeferrableState
{
    // Less than a millionth of a watt-hour is the dust of floating point: it is neither due nor late.
    private const double DustKwh = 1e-9;
    private const double DustHours = 1e-9;

    private readonly DeferrableLoad _load;
    private readonly double[] _hours;
    private readonly int[] _window;
    private readonly double[] _hoursAfter;
    private readonly double[] _kwh;
    private readonly double[] _lateKwh;
    private readonly double[] _givenUpKwh;
    private readonly Queue<LateEnergy> _late = new();
    private double _startHour;
    private double _remaining;
    private double _due;
    private int _current = int.MinValue;

    internal DeferrableState(DeferrableLoad load, Timeline time)
    {
        (_load, _hours) = (load, time.HoursArray);
        _window = new int[time.Count];
        _hoursAfter = new double[time.Count];
        (_kwh, _lateKwh, _givenUpKwh) = (new double[time.Count], new double[time.Count], new double[time.Count]);
        for (var i = 0; i < time.Count; i++) _window[i] = WindowOf(i, time.Clock);
        if (load.KwhPerDay > 0) DemandStarts(time);
        for (var i = time.Count - 2; i >= 0; i--)
            _hoursAfter[i] = _window[i] != int.MinValue && _window[i + 1] == _window[i] ? _hours[i + 1] + _hoursAfter[i + 1] : 0;
    }

    internal double MustKwh { get; private set; }

    internal double MayKwh { get; private set; }

    /// <summary>For each interval the number of the day on which its hours began, or the least number where it may not run.</summary>
    internal ReadOnlySpan<int> Windows => _window;

    internal double HoursLeft(int i) => _hoursAfter[i];

    /// <summary>Must run: what else would miss its deadline, and all that is late, as far as its power goes.</summary>
    internal void Look(int i)
    {
        if (_window[i] != _current)
        {
            if (_remaining > DustKwh) _late.Enqueue(new LateEnergy(_remaining, _startHour + _load.LateHours));
            _current = _window[i];
            _remaining = _current == int.MinValue ? 0 : _load.KwhPerDay;
        }
        // Given up in the interval before: there its time was over.
        while (_late.TryPeek(out var oldest) && oldest.UntilHour <= _startHour + DustHours) _givenUpKwh[i - 1] += _late.Dequeue().Kwh;
        var lateKwh = LateTotalKwh();
        MayKwh = Math.Min(_remaining + lateKwh, _load.MostKw * _hours[i]);
        _due = Math.Clamp(_remaining - (_load.MostKw * _hoursAfter[i]), 0, MayKwh);
        MustKwh = Math.Min(MayKwh, _due + lateKwh);
    }

    /// <summary>What it is given goes first to what is due now, then to the oldest of what is late, then to what might still wait.</summary>
    internal void Run(int i, double kwh)
    {
        _kwh[i] = kwh;
        var inTime = Math.Min(kwh, _due);
        var left = kwh - inTime;
        var later = Math.Min(left, LateTotalKwh());
        _lateKwh[i] = later;
        ServeLate(later);
        _remaining = Math.Max(0, _remaining - inTime - (left - later));
        _startHour += _hours[i];
    }

    /// <summary>The end of the run is a deadline, after which nothing can be tried.</summary>
    internal DeferrableOutcome Outcome()
    {
        if (_remaining > DustKwh) _givenUpKwh[^1] += _remaining;
        _givenUpKwh[^1] += LateTotalKwh();
        (_remaining, _current) = (0, int.MinValue);
        _late.Clear();
        return new DeferrableOutcome(_load.Name, _kwh, _lateKwh, _givenUpKwh);
    }

    private double LateTotalKwh()
    {
        var sum = 0.0;
        foreach (var late in _late) sum += late.Kwh;
        return sum;
    }

    private void ServeLate(double kwh)
    {
        if (_late.Count == 0) return;
        var rest = new List<LateEnergy>(_late.Count);
        foreach (var late in _late)
        {
            var served = Math.Min(kwh, late.Kwh);
            kwh -= served;
            if (late.Kwh - served > DustKwh) rest.Add(late with { Kwh = late.Kwh - served });
        }
        _late.Clear();
        foreach (var late in rest) _late.Enqueue(late);
    }

    /// <summary>Hours that begin and end inside one interval would be passed over, day after day.</summary>
    private void DemandStarts(Timeline time)
    {
        for (var i = 0; i < time.Count; i++)
        {
            var (from, until) = ((double)time.Clock.MinuteOfDay[i], time.Clock.MinuteOfDay[i] + (_hours[i] * 60));
            for (var day = 0; (day * 1440) + _load.Between.FromMinute + (_load.Between.Hours * 60) <= until; day++)
            {
                if ((day * 1440) + _load.Between.FromMinute <= from) continue;
                if (_load.Days.Count == 0 || _load.Days.Contains(LocalClock.WeekdayOfDay(time.Clock.DayNumber[i] + day))) throw Throw.HoursBetweenStarts(_load, i, time.LocalStartOf(i), _hours[i]);
            }
        }
    }

    /// <summary>The number of the day on which the hours began; none outside them and on other days of the week.</summary>
    private int WindowOf(int i, LocalClock clock)
    {
        var minute = clock.MinuteOfDay[i];
        if (!_load.Between.Contains(minute)) return int.MinValue;
        var day = clock.DayNumber[i] - (minute < _load.Between.FromMinute ? 1 : 0);
        return _load.Days.Count == 0 || _load.Days.Contains(LocalClock.WeekdayOfDay(day)) ? day : int.MinValue;
    }
}
