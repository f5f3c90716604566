using NodaTime;

namespace SolarEconomics;

/// <summary>Finds how long the interval of each row is, when the record states only one edge of it.</summary>
internal static class IntervalEnds
{
    private const long MsPerDay = 86_400_000;

    /// <summary>The most common distance of two rows; <see langword="null"/> with fewer than two rows.</summary>
    internal static long? CommonStepMs(ReadOnlySpan<long> startMs)
    {
        if (startMs.Length < 2) return null;
        // Most records have one step: try the first distance before counting all of them.
        var first = startMs[1] - startMs[0];
        var same = 0;
        for (var i = 1; i < startMs.Length; i++)
            if (startMs[i] - startMs[i - 1] == first) same++;
        if (same * 2L > startMs.Length) return first;
        var counts = new Dictionary<long, int>();
        for (var i = 1; i < startMs.Length; i++)
        {
            var step = startMs[i] - startMs[i - 1];
            counts[step] = counts.GetValueOrDefault(step) + 1;
        }
        return counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key).First().Key;
    }

    /// <summary>The most common distance of two rows, where most rows keep to one step without a look at any of them.</summary>
    internal static long? CommonStepMs(StampColumn stamps) =>
        stamps.Stretches is { } known && (stamps.Count - known.Begins.Count) * 2L > stamps.Count ? known.StepMs : CommonStepMs(stamps.Each);

    /// <summary>Whether nine of ten distances are a whole number of steps: the record has a grid, perhaps with holes.</summary>
    internal static bool IsRegular(ReadOnlySpan<long> startMs, long stepMs)
    {
        var whole = 0;
        for (var i = 1; i < startMs.Length; i++)
            if ((startMs[i] - startMs[i - 1]) % stepMs == 0) whole++;
        return whole * 10L >= (startMs.Length - 1) * 9L;
    }

    /// <summary>Ends of intervals that begin at the stamps and have the common step, never beyond the next row.</summary>
    internal static long[] OfStarts(ReadOnlySpan<long> startMs, long stepMs)
    {
        var ends = new long[startMs.Length];
        for (var i = 0; i < ends.Length; i++)
        {
            var end = startMs[i] + stepMs;
            ends[i] = i + 1 < startMs.Length && startMs[i + 1] < end ? startMs[i + 1] : end;
        }
        return ends;
    }

    /// <summary>Starts of intervals that end at the stamps and have the common step, never before the row above.</summary>
    internal static long[] OfEnds(ReadOnlySpan<long> endMs, long stepMs)
    {
        var starts = new long[endMs.Length];
        for (var i = 0; i < starts.Length; i++)
        {
            var start = endMs[i] - stepMs;
            starts[i] = i > 0 && endMs[i - 1] > start ? endMs[i - 1] : start;
        }
        return starts;
    }

    /// <summary>Ends of whole local days, months, or periods up to the next row.</summary>
    internal static long[] OfDays(ReadOnlySpan<long> startMs, StampFineness fineness, DateTimeZone zone)
    {
        var ends = new long[startMs.Length];
        var step = CommonStepMs(startMs) ?? MsPerDay;
        var stepDays = (int)Math.Round(step / (double)MsPerDay);
        var monthly = fineness == StampFineness.Month || stepDays is >= 28 and <= 31;
        for (var i = 0; i < ends.Length; i++)
        {
            var day = Instant.FromUnixTimeMilliseconds(startMs[i]).InZone(zone).Date;
            var next = monthly ? day.PlusMonths(1) : day.PlusDays(Math.Max(1, stepDays));
            var end = LocalDays.StartOf(next, zone).ToUnixTimeMilliseconds();
            ends[i] = i + 1 < ends.Length && startMs[i + 1] < end ? startMs[i + 1] : end;
        }
        return ends;
    }
}
