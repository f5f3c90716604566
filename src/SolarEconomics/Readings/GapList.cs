using NodaTime;

namespace SolarEconomics;

/// <summary>Collects where a channel has no value: missing intervals, and holes between intervals. What joins becomes one gap.</summary>
internal sealed class GapList(Channel channel)
{
    private readonly List<Gap> _gaps = [];
    private readonly long _usualTicks = channel.UsualStep.BclCompatibleTicks;

    internal IReadOnlyList<Gap> All => _gaps;

    /// <summary>How many of the channel's usual intervals are missing.</summary>
    internal int Intervals { get; private set; }

    /// <summary>Adds the missing interval at a place and those that follow it.</summary>
    /// <param name="from">The first missing interval.</param>
    /// <param name="end">End of its stretch, excluded.</param>
    /// <returns>The last missing interval.</returns>
    internal int AddMissing(int from, int end)
    {
        var times = channel.Times;
        var quality = channel.Quality;
        // In a record of one step every interval is a usual one: the length of each need not be looked at.
        var oneStep = times.StepTicks == _usualTicks;
        var intervals = 0;
        var i = from;
        for (; i < end && (quality[i] & Quality.Missing) != Quality.Good; i++)
            intervals += oneStep ? 1 : IntervalsIn(times.EndTicks(i) - times.StartTicks(i));
        Add(times.StartTicks(from), times.EndTicks(i - 1), intervals);
        return i - 1;
    }

    /// <summary>Adds the hole before an interval.</summary>
    internal void AddHole(int before)
    {
        var (start, end) = (channel.Times.EndTicks(before - 1), channel.Times.StartTicks(before));
        Add(start, end, IntervalsIn(end - start));
    }

    private void Add(long startTicks, long endTicks, int intervals)
    {
        var (start, end) = (Instant.FromUnixTimeTicks(startTicks), Instant.FromUnixTimeTicks(endTicks));
        Intervals += intervals;
        if (_gaps.Count > 0 && _gaps[^1].End == start) _gaps[^1] = _gaps[^1] with { End = end, Intervals = _gaps[^1].Intervals + intervals };
        else _gaps.Add(new Gap(start, end, intervals));
    }

    private int IntervalsIn(long ticks) => Math.Max(1, (int)Math.Min(int.MaxValue / 4, Math.Round(ticks / (double)_usualTicks)));
}
