using NodaTime;

namespace SolarEconomics;

/// <summary>Starts and ends of a row of intervals: two numbers where they follow each other by one step, two for each stretch where there are holes
/// between stretches of one step, else a number or two for each interval.</summary>
/// <remarks>Unit: ticks of 100 ns since 1970, UTC. Several channels of one record share one axis. Immutable.</remarks>
internal sealed partial class TimeAxis
{
    private const long TicksPerMs = 10_000;

    private readonly long _first;
    private readonly long _step;
    private readonly long[]? _starts;
    private readonly long[]? _ends;

    private TimeAxis(int count, long first, long step, long[]? starts, long[]? ends) => (Count, _first, _step, _starts, _ends) = (count, first, step, starts, ends);

    internal int Count { get; }

    /// <summary>Whether every interval begins where the one before ends, and all are of one length.</summary>
    internal bool IsRegular => _starts is null && _stretches is null;

    /// <summary>The one length of all intervals; <see langword="null"/> where they differ or there is none.</summary>
    internal long? StepTicks => Count > 0 && _ends is null ? _step : null;

    internal long StartTicks(int index) =>
        _starts is not null ? _starts[index] : _stretches is not null ? StartInStretch(index) : _first + (index * _step);

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
        for (var i = 0; i < starts.Length; i++)
            if (ends[i] - starts[i] != step) return new TimeAxis(starts.Length, starts[0], step, starts, ends);
        return OfStarts(starts, step, 1, 0) ?? new TimeAxis(starts.Length, starts[0], step, starts, null);
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
}
