namespace SolarEconomics;

/// <summary>The waiting loads as a run goes on: what each still needs, by when, and what it may take now.</summary>
internal sealed class DeferrableQueue
{
    private readonly DeferrableState[] _loads;
    private readonly double[] _runKwh;

    internal DeferrableQueue(IReadOnlyList<DeferrableLoad> loads, Timeline time)
    {
        _loads = [.. loads.Select(load => new DeferrableState(load, time))];
        _runKwh = new double[loads.Count == 0 ? 0 : time.Count];
    }

    internal double MustKwh { get; private set; }

    internal double MayKwh { get; private set; }

    internal double RunKwh(int i) => _loads.Length == 0 ? 0 : _runKwh[i];

    internal void Look(int i)
    {
        (MustKwh, MayKwh) = (0, 0);
        foreach (var load in _loads)
        {
            load.Look(i);
            MustKwh += load.MustKwh;
            MayKwh += load.MayKwh;
        }
    }

    /// <summary>Shares what runs now: what must first, then by the earliest deadline.</summary>
    internal void Run(int i, double kwh)
    {
        if (_loads.Length == 0 || kwh == 0) return;
        _runKwh[i] = kwh;
        var mustShare = MustKwh > 0 ? Math.Min(1, kwh / MustKwh) : 0;
        var left = Math.Max(0, kwh - MustKwh);
        foreach (var load in _loads) load.Run(i, load.MustKwh * mustShare);
        foreach (var load in _loads.OrderBy(l => l.HoursLeft(i)))
        {
            var more = Math.Min(left, load.MayKwh - load.MustKwh);
            load.Run(i, more);
            left -= more;
        }
    }

    internal IReadOnlyList<DeferrableOutcome> Outcomes() => [.. _loads.Select(load => load.Outcome())];
}
