namespace SolarEconomics;

/// <summary>The waiting loads as a run goes on: what each still needs, by when, and what it may take now.</summary>
internal sealed class DeferrableQueue
{
    private readonly DeferrableState[] _loads;

    internal DeferrableQueue(IReadOnlyList<DeferrableLoad> loads, Timeline time) => _loads = [.. loads.Select(load => new DeferrableState(load, time))];

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
        foreach (var load in _loads.OrderBy(l => l.HoursLeft(i)))
        {
            var more = Math.Min(left, load.MayKwh - load.MustKwh);
            load.Run(i, (load.MustKwh * mustShare) + more);
            left -= more;
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
