namespace SolarEconomics.Solvers;

/// <summary>One waiting load: when it may run, in time or late, and how much it was given by each deadline and in all.</summary>
internal sealed class WaitingLimits
{
    private readonly DeferrableLoad _load;
    private readonly Timeline _time;
    private readonly int[] _windows;
    private readonly DeferrableOutcome _outcome;
    private readonly bool[] _mayBeLate;

    internal WaitingLimits(DeferrableLoad load, Timeline time, DeferrableOutcome outcome)
    {
        (_load, _time, _outcome) = (load, time, outcome);
        _windows = new DeferrableState(load, time).Windows.ToArray();
        _mayBeLate = LateTimes();
    }

    /// <summary>Whether any of it came after its deadline. Where none did, a bound that serves as much by every deadline has nothing left to run late.</summary>
    internal bool RanLate => _mayBeLate.Length > 0;

    internal double MostKwh(int i) => _windows[i] == int.MinValue ? 0 : Math.Min(_load.KwhPerDay, _load.MostKw * _time.Hours[i]);

    /// <summary>The most that can come after a deadline in an interval.</summary>
    internal double MostLateKwh(int i) => RanLate && _mayBeLate[i] ? _load.MostKw * _time.Hours[i] : 0;

    /// <summary>The stretches between two deadlines that touch <c>[from, to)</c>, each with the least and the most that must run inside it.</summary>
    internal IEnumerable<(int From, int To, double LowKwh, double HighKwh)> Stretches(int from, int to)
    {
        for (var start = from; start < to;)
        {
            var window = _windows[start];
            var end = start;
            while (end < to && _windows[end] == window) end++;
            if (window != int.MinValue) yield return Stretch(window, start, end);
            start = end;
        }
    }

    /// <summary>The least and the most that must run inside <c>[from, to)</c>, in time and late together.</summary>
    internal (double LowKwh, double HighKwh) Total(int from, int to)
    {
        var given = BandSums.Total(_outcome.Kwh.Span[from..to]);
        // What hours and lateness let over an edge of the program may come from beyond it, or run there.
        var overOneEdge = (Math.Ceiling(_load.LateHours / 24) + 2) * _load.KwhPerDay;
        var edges = (from > 0 ? 1 : 0) + (to < _windows.Length ? 1 : 0);
        var days = _windows.AsSpan(from, to - from).ToArray().Distinct().Count();
        return (Math.Max(0, given - (edges * overOneEdge)), (days * _load.KwhPerDay) + (from > 0 ? overOneEdge : 0));
    }

    private bool[] LateTimes()
    {
        var late = _outcome.LateKwh.Span;
        if (BandSums.Total(late) <= 0) return [];
        var may = new bool[_windows.Length];
        var (hour, until) = (0.0, double.NegativeInfinity);
        for (var i = 0; i < may.Length; i++)
        {
            if (i > 0 && _windows[i - 1] != int.MinValue && _windows[i] != _windows[i - 1]) until = hour + _load.LateHours;
            may[i] = hour < until;
            hour += _time.Hours[i];
        }
        return may;
    }

    private (int From, int To, double LowKwh, double HighKwh) Stretch(int window, int start, int end)
    {
        var (given, elsewhere) = (0.0, 0.0);
        for (var i = start; i < end; i++) given += InTimeKwh(i);
        // A stretch that the edge of the program cuts: what ran beyond the edge may come from here, and as much of this may run there as finds room.
        for (var i = start - 1; i >= 0 && _windows[i] == window; i--) Beyond(i, ref given, ref elsewhere);
        for (var i = end; i < _windows.Length && _windows[i] == window; i++) Beyond(i, ref given, ref elsewhere);
        return (start, end, Math.Max(0, given - elsewhere), _load.KwhPerDay);
    }

    private void Beyond(int i, ref double given, ref double elsewhere)
    {
        given += InTimeKwh(i);
        elsewhere += MostKwh(i);
    }

    private double InTimeKwh(int i) => _outcome.Kwh.Span[i] - _outcome.LateKwh.Span[i];
}
