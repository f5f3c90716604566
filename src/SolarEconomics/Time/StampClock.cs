using System.Runtime.CompilerServices;
using NodaTime;

namespace SolarEconomics;

/// <summary>Turns the local stamps of one record, in the order of its rows, into instants. Milliseconds since 1970 on both sides.</summary>
/// <remarks>The common row costs one pair of comparisons: the range without doubt around the last stamp is kept, and only stamps
/// outside it ask the zone. Not for several threads: it remembers the row before.</remarks>
internal sealed class StampClock(DateTimeZone zone, StampPolicy policy)
{
    // The range in which every local time is one instant, and its offset. Empty while inside a repeated hour.
    private long _sureFrom;
    private long _sureTo;
    private long _offsetMs;

    private bool _any;
    private RepeatedPass? _pass;
    private long _lastLocalMs;
    private readonly List<RepeatedPass> _passes = [];

    /// <summary>The repeated hours met so far, in the order of the rows.</summary>
    internal IReadOnlyList<RepeatedPass> RepeatedHours => _passes;

    /// <summary>Whether a local time lies in the range without doubt around the last stamp; nothing is remembered where it does not.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal bool IsSure(long localMs, out long unixMs)
    {
        unixMs = localMs - _offsetMs;
        return localMs >= _sureFrom && localMs < _sureTo;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal StampFate Resolve(long localMs, int line, out long unixMs)
    {
        return IsSure(localMs, out unixMs) ? StampFate.Sure : ResolveByZone(localMs, line, out unixMs);
    }

    private StampFate ResolveByZone(long localMs, int line, out long unixMs)
    {
        var local = LocalOf(localMs);
        var map = zone.MapLocal(local);
        var fate = map.Count switch
        {
            1 => Sure(map.EarlyInterval, localMs, out unixMs),
            2 => Repeated(map, localMs, line, out unixMs),
            _ => Skipped(map, localMs, out unixMs),
        };
        _any = true;
        _lastLocalMs = localMs;
        return fate;
    }

    private StampFate Sure(NodaTime.TimeZones.ZoneInterval interval, long localMs, out long unixMs)
    {
        _pass = null;
        _offsetMs = interval.WallOffset.Milliseconds;
        _sureFrom = long.MinValue;
        _sureTo = long.MaxValue;
        if (interval.HasStart)
        {
            var before = zone.GetZoneInterval(interval.Start - Duration.Epsilon);
            _sureFrom = interval.Start.ToUnixTimeMilliseconds() + Math.Max(_offsetMs, before.WallOffset.Milliseconds);
        }
        if (interval.HasEnd)
        {
            var after = zone.GetZoneInterval(interval.End);
            _sureTo = interval.End.ToUnixTimeMilliseconds() + Math.Min(_offsetMs, after.WallOffset.Milliseconds);
        }
        unixMs = localMs - _offsetMs;
        return StampFate.Sure;
    }

    private StampFate Repeated(NodaTime.TimeZones.ZoneLocalMapping map, long localMs, int line, out long unixMs)
    {
        var early = map.EarlyInterval;
        var fromMs = early.End.ToUnixTimeMilliseconds() + map.LateInterval.WallOffset.Milliseconds;
        if (_pass is null || _pass.FromLocalMs != fromMs)
        {
            // Coming from anywhere but the time just before, the order of the rows tells nothing about the pass.
            _pass = new RepeatedPass(fromMs, line, InOrder: _any && _sureTo == fromMs);
            _passes.Add(_pass);
            (_sureFrom, _sureTo) = (0, 0);
        }
        else if (localMs <= _lastLocalMs)
        {
            if (_pass.SecondSeen) _pass.ThirdSeen = true;
            _pass.SecondSeen = true;
        }
        var second = policy.Repeated switch
        {
            RepeatedHour.First => false,
            RepeatedHour.Second => true,
            _ => _pass.SecondSeen,
        };
        unixMs = localMs - (second ? map.LateInterval : early).WallOffset.Milliseconds;
        var told = policy.Repeated != RepeatedHour.ByRowOrder || (_pass is { InOrder: true, ThirdSeen: false });
        return told ? StampFate.Resolved : StampFate.Ambiguous;
    }

    private StampFate Skipped(NodaTime.TimeZones.ZoneLocalMapping map, long localMs, out long unixMs)
    {
        _pass = null;
        (_sureFrom, _sureTo) = (0, 0);
        // Read with the offset before the jump, the stamp lands after it: moved on by the length of the jump.
        unixMs = localMs - map.EarlyInterval.WallOffset.Milliseconds;
        return policy.Skipped == SkippedHour.Forward ? StampFate.Moved : StampFate.Skipped;
    }

    /// <summary>The local date and time of a number of milliseconds since 1970 on the wall clock.</summary>
    internal static LocalDateTime LocalOf(long localMs) =>
        LocalDateTime.FromDateTime(DateTime.UnixEpoch.AddTicks(localMs * TimeSpan.TicksPerMillisecond));

    /// <summary>One passage of the record through a repeated hour.</summary>
    internal sealed record RepeatedPass(long FromLocalMs, int Line, bool InOrder)
    {
        /// <summary>Local time went back once: both passes stand in the record.</summary>
        internal bool SecondSeen { get; set; }

        /// <summary>Local time went back twice: rows are repeated or out of order.</summary>
        internal bool ThirdSeen { get; set; }
    }
}
