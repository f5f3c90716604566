namespace SolarEconomics;

internal sealed partial class TimeAxis
{
    /// <summary>Stretches must be so long on average, in intervals, to be worth looking the right one up.</summary>
    private const int UsefulStretch = 16;

    // Where each stretch begins: index of its first interval and its time. A logger is off now and then: a record of a million rows has a dozen.
    private readonly int[]? _stretches;
    private readonly long[]? _stretchTicks;

    private TimeAxis(int count, long step, int[] stretches, long[] stretchTicks)
        : this(count, stretchTicks[0], step, null, null) => (_stretches, _stretchTicks) = (stretches, stretchTicks);

    /// <summary>The axis of stamps that stand one step after the one before, except after a hole here and there; <see langword="null"/> where
    /// some are nearer to each other, or holes are many.</summary>
    /// <param name="stamps">The stamps, ascending.</param>
    /// <param name="stepMs">The step.</param>
    /// <param name="shift">Steps from a stamp to the start of its interval: 0, or −1 where it names the end.</param>
    internal static TimeAxis? OfStamps(StampColumn stamps, long stepMs, int shift)
    {
        var (stepTicks, shiftTicks) = (stepMs * TicksPerMs, shift * stepMs * TicksPerMs);
        if (stamps.Stretches is not { } known || known.StepMs != stepMs) return OfStarts(stamps.Each, stepMs, TicksPerMs, shiftTicks);
        var (begins, ticks) = (new int[known.Begins.Count], new long[known.Begins.Count]);
        for (var s = 0; s < begins.Length; s++)
        {
            var (row, ms) = known.Begins[s];
            if (s > 0 && ms - stamps[row - 1] < stepMs) return null;
            (begins[s], ticks[s]) = (row, (ms * TicksPerMs) + shiftTicks);
        }
        return OfStretches(stamps.Count, stepTicks, begins, ticks);
    }

    /// <summary>Index after the last interval of those that follow each other without a hole from one on.</summary>
    internal int EndOfStretch(int index)
    {
        if (IsRegular) return Count;
        if (_stretches is null)
        {
            do index++;
            while (index < Count && StartTicks(index) <= EndTicks(index - 1));
            return index;
        }
        var next = StretchOf(index) + 1;
        return next < _stretches.Length ? _stretches[next] : Count;
    }

    private static TimeAxis? OfStarts(ReadOnlySpan<long> at, long step, long ticksPerUnit, long shiftTicks)
    {
        var (begins, ticks) = (new List<int> { 0 }, new List<long> { (at[0] * ticksPerUnit) + shiftTicks });
        for (var i = 1; i < at.Length; i++)
        {
            var distance = at[i] - at[i - 1];
            if (distance == step) continue;
            if (distance < step || begins.Count > at.Length / UsefulStretch) return null;
            begins.Add(i);
            ticks.Add((at[i] * ticksPerUnit) + shiftTicks);
        }
        return OfStretches(at.Length, step * ticksPerUnit, [.. begins], [.. ticks]);
    }

    private static TimeAxis? OfStretches(int count, long step, int[] begins, long[] ticks) =>
        begins.Length == 1 ? Regular(ticks[0], step, count)
        : begins.Length > count / UsefulStretch ? null
        : new TimeAxis(count, step, begins, ticks);

    private long StartInStretch(int index)
    {
        if ((uint)index >= (uint)Count) throw new ArgumentOutOfRangeException(nameof(index), index, FormattableString.Invariant($"Expected an index from 0 to {Count - 1}."));
        var stretch = StretchOf(index);
        return _stretchTicks![stretch] + ((index - _stretches![stretch]) * _step);
    }

    /// <summary>The last stretch that begins at an index or before it.</summary>
    private int StretchOf(int index)
    {
        var begins = _stretches!;
        var (low, high) = (0, begins.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (begins[middle] <= index) low = middle;
            else high = middle - 1;
        }
        return low;
    }
}
