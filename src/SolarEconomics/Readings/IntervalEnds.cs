using NodaTime;

namespace SolarEconomics;

/// <summary>Finds how long the interval of each row is, when the record states only one edge of it.</summary>
internal static class IntervalEnds
{
    private const long MsPerDay = 86_400_000;

    /// <summary>The day on which clocks are set forward. Unit: milliseconds.</summary>
    internal const long ShortestDayMs = 23 * 3_600_000;

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

    /// <summary>Ends of whole local days, weeks, months, quarters, years, or of periods up to the next row where no length is usual.</summary>
    internal static long[] OfDays(ReadOnlySpan<long> startMs, StampFineness fineness, DateTimeZone zone)
    {
        var ends = new long[startMs.Length];
        var next = NextOf(startMs, fineness, zone);
        for (var i = 0; i < ends.Length; i++)
        {
            var end = LocalDays.StartOf(next(Instant.FromUnixTimeMilliseconds(startMs[i]).InZone(zone).Date), zone).ToUnixTimeMilliseconds();
            ends[i] = i + 1 < ends.Length && (next == ToNextRow || startMs[i + 1] < end) ? startMs[i + 1] : end;
        }
        return ends;
    }

    /// <summary>Starts of the local days, weeks, months … that end at the stamps: those of the day, or of the row before where that is later.</summary>
    internal static long[] OfDaysBefore(ReadOnlySpan<long> endMs, DateTimeZone zone)
    {
        var starts = new long[endMs.Length];
        var days = Math.Max(1, (int)Math.Round((CommonStepMs(endMs) ?? MsPerDay) / (double)MsPerDay));
        for (var i = 0; i < starts.Length; i++)
        {
            var start = LocalDays.StartOf(Instant.FromUnixTimeMilliseconds(endMs[i]).InZone(zone).Date.PlusDays(-days), zone).ToUnixTimeMilliseconds();
            starts[i] = i > 0 && endMs[i - 1] > start ? endMs[i - 1] : start;
        }
        return starts;
    }

    /// <summary>Whether each stamp is the start of a local day.</summary>
    internal static bool AreMidnights(ReadOnlySpan<long> ms, DateTimeZone zone)
    {
        foreach (var one in ms)
        {
            var at = Instant.FromUnixTimeMilliseconds(one);
            if (LocalDays.StartOf(at.InZone(zone).Date, zone) != at) return false;
        }
        return true;
    }

    /// <summary>The day on which a period that begins on a day ends.</summary>
    private static Func<LocalDate, LocalDate> NextOf(ReadOnlySpan<long> startMs, StampFineness fineness, DateTimeZone zone)
    {
        if (fineness == StampFineness.Month) return day => day.PlusMonths(1);
        if (fineness == StampFineness.Year) return day => day.PlusYears(1);
        if (fineness == StampFineness.Week) return day => day.PlusWeeks(1);
        var stepDays = Math.Max(1, (int)Math.Round((CommonStepMs(startMs) ?? MsPerDay) / (double)MsPerDay));
        if (stepDays >= 28 && AllOnOneDayOfMonth(startMs, zone))
        {
            var months = (int)Math.Round(stepDays / 30.44);
            return day => day.PlusMonths(months);
        }
        return stepDays > 7 && !IsUsual(startMs, stepDays * MsPerDay) ? ToNextRow : day => day.PlusDays(stepDays);
    }

    /// <summary>Bills are months long and never equally: each goes on to the next, and the last is taken as a month.</summary>
    private static LocalDate ToNextRow(LocalDate day) => day.PlusMonths(1);

    private static bool AllOnOneDayOfMonth(ReadOnlySpan<long> startMs, DateTimeZone zone)
    {
        var first = Instant.FromUnixTimeMilliseconds(startMs[0]).InZone(zone).Day;
        foreach (var ms in startMs)
            if (Instant.FromUnixTimeMilliseconds(ms).InZone(zone).Day != first) return false;
        return true;
    }

    /// <summary>Whether half of the distances are one length, to the day.</summary>
    private static bool IsUsual(ReadOnlySpan<long> startMs, long stepMs)
    {
        var same = 0;
        for (var i = 1; i < startMs.Length; i++)
            if (Math.Abs(startMs[i] - startMs[i - 1] - stepMs) < MsPerDay) same++;
        return same * 2 >= startMs.Length - 1;
    }
}
