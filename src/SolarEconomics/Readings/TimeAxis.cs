using NodaTime;

namespace SolarEconomics;

/// <summary>Starts and ends of a row of intervals: two numbers where they follow each other by one step, else a number or two for each.</summary>
/// <remarks>Unit: ticks of 100 ns since 1970, UTC. Several channels of one record share one axis. Immutable.</remarks>
internal sealed class TimeAxis
{
    private const long TicksPerMs = 10_000;

    private readonly long _first;
    private readonly long _step;
    private readonly long[]? _starts;
    private readonly long[]? _ends;

    private TimeAxis(int count, long first, long step, long[]? starts, long[]? ends) => (Count, _first, _step, _starts, _ends) = (count, first, step, starts, ends);

    internal int Count { get; }

    /// <summary>Whether every interval begins where the one before ends, and all are of one length.</summary>
    internal bool IsRegular => _starts is null;

    /// <summary>The one length of all intervals; <see langword="null"/> where they differ or there is none.</summary>
    internal long? StepTicks => Count > 0 && _ends is null ? _step : null;

    internal long StartTicks(int index) => _starts is null ? _first + (index * _step) : _starts[index];

    internal long EndTicks(int index) => _ends is not null ? _ends[index] : StartTicks(index) + _step;

    internal Instant Start(int index) => Instant.FromUnixTimeTicks(StartTicks(index));

    internal Instant End(int index) => Instant.FromUnixTimeTicks(EndTicks(index));

    /// <summary>Time from the start of one interval to the end of another. Unit: hours.</summary>
    internal double Hours(int from, int to) => (EndTicks(to) - StartTicks(from)) / (double)NodaConstants.TicksPerHour;

    internal static TimeAxis Empty { get; } = new(0, 0, 0, [], []);

    internal static TimeAxis Regular(long firstTicks, long stepTicks, int count) => new(count, firstTicks, stepTicks, null, null);

    /// <summary>An axis from columns of ticks, which it may keep.</summary>
    internal static TimeAxis OfTicks(long[] starts, long[] ends)
    {
        if (starts.Length == 0) return Empty;
        var step = ends[0] - starts[0];
        var (oneLength, joined) = (true, true);
        for (var i = 0; i < starts.Length && oneLength; i++)
        {
            oneLength = ends[i] - starts[i] == step;
            joined &= i == 0 || starts[i] == ends[i - 1];
        }
        if (!oneLength) return new TimeAxis(starts.Length, starts[0], step, starts, ends);
        return joined ? Regular(starts[0], step, starts.Length) : new TimeAxis(starts.Length, starts[0], step, starts, null);
    }

    internal static TimeAxis OfInstants(ReadOnlySpan<Instant> starts, ReadOnlySpan<Instant> ends)
    {
        var (from, to) = (new long[starts.Length], new long[starts.Length]);
        for (var i = 0; i < from.Length; i++) (from[i], to[i]) = (starts[i].ToUnixTimeTicks(), ends[i].ToUnixTimeTicks());
        return OfTicks(from, to);
    }

    internal static TimeAxis OfMilliseconds(ReadOnlySpan<long> starts, ReadOnlySpan<long> ends)
    {
        var (from, to) = (new long[starts.Length], new long[starts.Length]);
        for (var i = 0; i < from.Length; i++) (from[i], to[i]) = (starts[i] * TicksPerMs, ends[i] * TicksPerMs);
        return OfTicks(from, to);
    }

    /// <summary>The axis of stamps that all stand one step after the one before, without a number for any of them; <see langword="null"/> where they do not.</summary>
    /// <param name="stampMs">The stamps.</param>
    /// <param name="stepMs">The step.</param>
    /// <param name="shift">Steps from a stamp to the start of its interval: 0, or −1 where it names the end.</param>
    internal static TimeAxis? RegularOf(ReadOnlySpan<long> stampMs, long stepMs, int shift)
    {
        for (var i = 1; i < stampMs.Length; i++)
            if (stampMs[i] - stampMs[i - 1] != stepMs) return null;
        return stampMs.IsEmpty ? Empty : Regular((stampMs[0] + (shift * stepMs)) * TicksPerMs, stepMs * TicksPerMs, stampMs.Length);
    }
}
