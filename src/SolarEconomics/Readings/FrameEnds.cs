using Deedle;
using NodaTime;

namespace SolarEconomics;

/// <summary>Ends of intervals in a frame, whose rows are named by starts alone.</summary>
internal static class FrameEnds
{
    /// <summary>The end that the rows tell of each start: the most common distance of two rows, never beyond the next row; empty where there are fewer than two.</summary>
    internal static Dictionary<Instant, Instant> Told(Instant[] starts)
    {
        var ms = Array.ConvertAll(starts, s => s.ToUnixTimeMilliseconds());
        if (IntervalEnds.CommonStepMs(ms) is not { } step) return [];
        var ends = IntervalEnds.OfStarts(ms, step);
        return Enumerable.Range(0, starts.Length).ToDictionary(i => starts[i], i => Instant.FromUnixTimeMilliseconds(ends[i]));
    }

    internal static bool AreTold(Channel channel, Dictionary<Instant, Instant> told)
    {
        for (var i = 0; i < channel.Count; i++)
            if (!channel.Quality[i].HasFlag(Quality.Missing) && (!told.TryGetValue(channel.Starts[i], out var end) || end != channel.Ends[i])) return false;
        return true;
    }

    /// <summary>The rows of a column whose ends stand in another, with those ends. A row without an end after its start is none of that column's.</summary>
    internal static (Instant[] Starts, long[] EndMs) Of(Frame<Instant, string> frame, string endColumn, Instant[] starts)
    {
        var ends = frame.GetColumn<Instant>(endColumn);
        var own = new List<(Instant Start, long End)>();
        foreach (var start in starts)
            if (ends.TryGet(start) is { HasValue: true } end && end.Value > start) own.Add((start, end.Value.ToUnixTimeMilliseconds()));
        return ([.. own.Select(o => o.Start)], [.. own.Select(o => o.End)]);
    }
}
