namespace SolarEconomics;

/// <summary>The waiting loads as a run goes on: what each still needs, by when, and what it may take now.</summary>
internal sealed class DeferrableQueue
{
    private readonly DeferrableState[] _loads;
    private readonly DeferrableState[] _byDeadline;

    internal DeferrableQueue(IReadOnlyList<DeferrableLoad> loads, Timeline time)
    {
        _loads = [.. loads.Select(load => new DeferrableState(load, time))];
        _byDeadline = [.. _loads];
    }

    internal double MustKwh { get; private set; }

    internal double MayKwh { get; private set; }

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
        if (_loads.Length == 0) return;
        var mustShare = MustKwh > 0 ? Math.Min(1, kwh / MustKwh) : 0;
        var left = Math.Max(0, kwh - MustKwh);
        SortByDeadline(i);
        foreach (var load in _byDeadline)
        {
            var more = Math.Min(left, load.MayKwh - load.MustKwh);
            load.Run(i, (load.MustKwh * mustShare) + more);
            left -= more;
        }
    }

    /// <summary>The earliest deadline first; the order of the conditions where two are equal. By insertion, as loads are few and an interval allocates nothing.</summary>
    private void SortByDeadline(int i)
    {
        for (var next = 0; next < _loads.Length; next++)
        {
            var (load, hoursLeft, at) = (_loads[next], _loads[next].HoursLeft(i), next);
            for (; at > 0 && _byDeadline[at - 1].HoursLeft(i) > hoursLeft; at--) _byDeadline[at] = _byDeadline[at - 1];
            _byDeadline[at] = load;
        }
    }

    /// <summary>What the loads got and gave up; the latter is added to what was wanted and to what was not served.</summary>
    internal IReadOnlyList<DeferrableOutcome> Outcomes(double[] wantedKwh, double[] unservedKwh)
    {
        var outcomes = _loads.Select(load => load.Outcome()).ToList();
        foreach (var outcome in outcomes)
        {
            var givenKwh = outcome.Kwh.Span;
            var givenUpKwh = outcome.GivenUpKwh.Span;
            for (var i = 0; i < wantedKwh.Length; i++)
            {
                wantedKwh[i] += givenKwh[i] + givenUpKwh[i];
                unservedKwh[i] += givenUpKwh[i];
            }
        }
        return outcomes;
    }
}
