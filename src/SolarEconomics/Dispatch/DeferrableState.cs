namespace SolarEconomics;

/// <summary>One waiting load as a run goes on.</summary>
internal sealed class DeferrableState
{
    private readonly DeferrableLoad _load;
    private readonly double[] _hours;
    private readonly int[] _window;
    private readonly double[] _hoursAfter;
    private readonly double[] _kwh;
    private double _remaining;
    private double _missed;
    private int _current = int.MinValue;

    internal DeferrableState(DeferrableLoad load, Timeline time)
    {
        (_load, _hours) = (load, time.HoursArray);
        _window = new int[time.Count];
        _hoursAfter = new double[time.Count];
        _kwh = new double[time.Count];
        for (var i = 0; i < time.Count; i++) _window[i] = WindowOf(i, time.Clock);
        for (var i = time.Count - 2; i >= 0; i--)
            _hoursAfter[i] = _window[i] != int.MinValue && _window[i + 1] == _window[i] ? _hours[i + 1] + _hoursAfter[i + 1] : 0;
    }

    internal double MustKwh { get; private set; }

    internal double MayKwh { get; private set; }

    /// <summary>For each interval the number of the day on which its hours began, or the least number where it may not run.</summary>
    internal ReadOnlySpan<int> Windows => _window;

    internal double HoursLeft(int i) => _hoursAfter[i];

    internal void Look(int i)
    {
        if (_window[i] != _current)
        {
            _missed += _remaining;
            _current = _window[i];
            _remaining = _current == int.MinValue ? 0 : _load.KwhPerDay;
        }
        MayKwh = Math.Min(_remaining, _load.MostKw * _hours[i]);
        MustKwh = Math.Clamp(_remaining - (_load.MostKw * _hoursAfter[i]), 0, MayKwh);
    }

    internal void Run(int i, double kwh)
    {
        _kwh[i] += kwh;
        _remaining = Math.Max(0, _remaining - kwh);
    }

    internal DeferrableOutcome Outcome() => new(_load.Name, _kwh, _missed + _remaining);

    /// <summary>The number of the day on which the hours began; none outside them and on other days of the week.</summary>
    private int WindowOf(int i, LocalClock clock)
    {
        var minute = clock.MinuteOfDay[i];
        if (!_load.Between.Contains(minute)) return int.MinValue;
        var day = clock.DayNumber[i] - (minute < _load.Between.FromMinute ? 1 : 0);
        return _load.Days.Count == 0 || _load.Days.Contains(LocalClock.WeekdayOfDay(day)) ? day : int.MinValue;
    }
}
