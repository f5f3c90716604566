namespace SolarEconomics;

/// <summary>A channel laid on a grid of its own step, without holes in the array: what a search over many shifts needs.</summary>
internal sealed class DenseSeries
{
    /// <summary>A record of more steps than this has a time that is wrong by decades.</summary>
    private const long MostSteps = 20_000_000;

    private readonly long _first;
    private readonly double[] _kwh;
    private readonly bool[] _known;

    private DenseSeries(long first, long step, int count) => (_first, Step, _kwh, _known) = (first, step, new double[count], new bool[count]);

    /// <summary>Length of a step. Unit: ticks.</summary>
    internal long Step { get; }

    internal int Known { get; private set; }

    /// <summary>Start of the first step. Unit: ticks since 1970.</summary>
    internal long FirstTicks => _first;

    /// <summary>Lays out the intervals of a channel that have its usual length.</summary>
    internal static DenseSeries Of(Channel channel)
    {
        var times = channel.Times;
        var step = channel.UsualStep.BclCompatibleTicks;
        if (channel.Count == 0 || step <= 0) return new DenseSeries(0, Math.Max(1, step), 0);
        var first = times.StartTicks(0);
        var count = ((times.StartTicks(channel.Count - 1) - first) / step) + 1;
        if (count > MostSteps) throw Throw.TooManyGaps(channel.Name, (int)MostSteps);
        var series = new DenseSeries(first, step, (int)count);
        for (var i = 0; i < channel.Count; i++)
        {
            var since = times.StartTicks(i) - first;
            if (since % step != 0 || times.EndTicks(i) - times.StartTicks(i) != step || channel.Quality[i].HasFlag(Quality.Missing)) continue;
            series._kwh[since / step] = channel.Kwh[i];
            series._known[since / step] = true;
            series.Known++;
        }
        return series;
    }

    /// <summary>Lays out what another channel counted in each interval of this grid; known only where it covers it whole. An interval across the edge of two is parted by time.</summary>
    internal static DenseSeries Of(Channel fine, DenseSeries coarse)
    {
        var series = new DenseSeries(coarse._first, coarse.Step, coarse._kwh.Length);
        var covered = new long[series._kwh.Length];
        var times = fine.Times;
        for (var i = 0; i < fine.Count; i++)
        {
            var (start, end) = (times.StartTicks(i), times.EndTicks(i));
            // What is longer than a step says nothing of the steps in it.
            if (end - start > series.Step || end <= series._first || fine.Quality[i].HasFlag(Quality.Missing)) continue;
            for (var cell = Math.Max(0, start - series._first) / series.Step; cell < covered.Length && series._first + (cell * series.Step) < end; cell++)
            {
                var from = series._first + (cell * series.Step);
                var inside = Math.Min(end, from + series.Step) - Math.Max(start, from);
                covered[cell] += inside;
                series._kwh[cell] += fine.Kwh[i] * (inside / (double)(end - start));
            }
        }
        for (var cell = 0; cell < covered.Length; cell++)
        {
            series._known[cell] = covered[cell] == series.Step;
            if (series._known[cell]) series.Known++;
            else series._kwh[cell] = 0;
        }
        return series;
    }

    /// <summary>Whether the steps of two grids of one step begin at the same times.</summary>
    internal static bool Meet(DenseSeries a, DenseSeries b) => (a._first - b._first) % a.Step == 0;

    /// <summary>Sums and correlation of two series where both are known, the second moved earlier by so many steps.</summary>
    internal static Overlap Compare(DenseSeries a, DenseSeries b, long lag)
    {
        var offset = ((a._first - b._first) / a.Step) + lag;
        var (from, to) = (Math.Max(0, -offset), Math.Min(a._kwh.Length, b._kwh.Length - offset));
        var overlap = default(Overlap);
        for (var i = from; i < to; i++)
            if (a._known[i] && b._known[i + offset]) overlap.Add(a._kwh[i], b._kwh[i + offset]);
        return overlap;
    }

    /// <summary>Squared differences by day of UTC, the second moved earlier by so many steps; pairs that were compared on each day; and the first's sum of squares around its mean over them.</summary>
    internal static (double[] Errors, int[] Pairs, double Variance) DayErrors(DenseSeries a, DenseSeries b, long lag)
    {
        if (a._kwh.Length == 0) return ([], [], 0);
        var offset = ((a._first - b._first) / a.Step) + lag;
        // Time of day of the first step.
        var into = a._first % NodaTime.NodaConstants.TicksPerDay;
        if (into < 0) into += NodaTime.NodaConstants.TicksPerDay;
        var days = (int)((into + ((a._kwh.Length - 1) * a.Step)) / NodaTime.NodaConstants.TicksPerDay) + 1;
        var (errors, pairs, overlap) = (new double[days], new int[days], default(Overlap));
        var (from, to) = (Math.Max(0, -offset), Math.Min(a._kwh.Length, b._kwh.Length - offset));
        for (var i = from; i < to; i++)
        {
            if (!a._known[i] || !b._known[i + offset]) continue;
            var day = (into + (i * a.Step)) / NodaTime.NodaConstants.TicksPerDay;
            var difference = a._kwh[i] - b._kwh[i + offset];
            errors[day] += difference * difference;
            pairs[day]++;
            overlap.Add(a._kwh[i], b._kwh[i + offset]);
        }
        return (errors, pairs, overlap.SquaresA);
    }

    /// <summary>One series less another, known where both are.</summary>
    internal static DenseSeries Difference(DenseSeries a, DenseSeries b)
    {
        var series = new DenseSeries(a._first, a.Step, a._kwh.Length);
        var offset = (a._first - b._first) / a.Step;
        for (var i = Math.Max(0, -offset); i < Math.Min(a._kwh.Length, b._kwh.Length - offset); i++)
        {
            if (!a._known[i] || !b._known[i + offset]) continue;
            (series._kwh[i], series._known[i]) = (a._kwh[i] - b._kwh[i + offset], true);
            series.Known++;
        }
        return series;
    }
}
