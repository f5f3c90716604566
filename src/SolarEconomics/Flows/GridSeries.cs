namespace SolarEconomics;

/// <summary>One flow laid on a grid: energy per interval, and whether the record knows it.</summary>
internal sealed class GridSeries
{
    internal GridSeries(int count)
    {
        Kwh = new double[count];
        Known = new bool[count];
    }

    /// <summary>Energy per interval; where not known, the part that the record does hold.</summary>
    internal double[] Kwh { get; }

    internal bool[] Known { get; }

    internal int MissingCount => Known.Count(known => !known);

    internal double KnownTotalKwh
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Kwh.Length; i++)
                if (Known[i]) sum += Kwh[i];
            return sum;
        }
    }

    /// <summary>Lays channels on a grid and adds them; an interval is known only where every channel covers it whole.</summary>
    internal static GridSeries Lay(IReadOnlyList<Channel> channels, IntervalGrid grid)
    {
        var sum = new GridSeries(grid.Count);
        Array.Fill(sum.Known, channels.Count > 0);
        var stepTicks = grid.Step.BclCompatibleTicks;
        var gridStart = grid.Start.ToUnixTimeTicks();
        foreach (var channel in channels)
        {
            var covered = new long[grid.Count];
            var starts = channel.Starts;
            var ends = channel.Ends;
            var kwh = channel.Kwh;
            var quality = channel.Quality;
            for (var i = 0; i < channel.Count; i++)
            {
                if (quality[i].HasFlag(Quality.Missing)) continue;
                var from = starts.TicksAt(i);
                var length = ends.TicksAt(i) - from;
                var cell = (from - gridStart) / stepTicks;
                if (from < gridStart || cell >= grid.Count) continue;
                if (from - gridStart - (cell * stepTicks) + length > stepTicks)
                    throw Throw.ReadingAcrossGrid(channel, starts[i], grid);
                covered[cell] += length;
                sum.Kwh[cell] += kwh[i];
            }
            for (var cell = 0; cell < grid.Count; cell++)
                if (covered[cell] < stepTicks) sum.Known[cell] = false;
        }
        return sum;
    }
}
