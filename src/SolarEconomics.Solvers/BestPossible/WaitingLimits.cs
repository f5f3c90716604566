namespace SolarEconomics.Solvers;

/// <summary>One waiting load: when it may run, and how much it was given by each deadline.</summary>
internal sealed class WaitingLimits
{
    private readonly DeferrableLoad _load;
    private readonly Timeline _time;
    private readonly int[] _windows;
    private readonly ReadOnlyMemory<double> _givenKwh;

    internal WaitingLimits(DeferrableLoad load, Timeline time, DeferrableOutcome outcome)
    {
        (_load, _time, _givenKwh) = (load, time, outcome.Kwh);
        _windows = new DeferrableState(load, time).Windows.ToArray();
    }

    internal double MostKwh(int i) => _windows[i] == int.MinValue ? 0 : Math.Min(_load.KwhPerDay, _load.MostKw * _time.Hours[i]);

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

    private (int From, int To, double LowKwh, double HighKwh) Stretch(int window, int start, int end)
    {
        var (given, elsewhere) = (0.0, 0.0);
        for (var i = start; i < end; i++) given += _givenKwh.Span[i];
        // A stretch that the edge of the program cuts: what ran beyond the edge may come from here, and as much of this may run there as finds room.
        for (var i = start - 1; i >= 0 && _windows[i] == window; i--) Beyond(i, ref given, ref elsewhere);
        for (var i = end; i < _windows.Length && _windows[i] == window; i++) Beyond(i, ref given, ref elsewhere);
        return (start, end, Math.Max(0, given - elsewhere), _load.KwhPerDay);
    }

    private void Beyond(int i, ref double given, ref double elsewhere)
    {
        given += _givenKwh.Span[i];
        elsewhere += MostKwh(i);
    }
}
