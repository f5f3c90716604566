using NodaTime;

namespace SolarEconomics;

internal sealed partial class CsvRows
{
    private bool _endsAreTimes;
    private bool _endIsLastDay;

    /// <summary>Column of the table that holds the ends of the intervals, in milliseconds since 1970; −1 where the record states none.</summary>
    internal int EndColumn { get; }

    /// <summary>Ends as the record states them, where it does and they can be; else by the common step. Never beyond the next row.</summary>
    internal long[] StatedEnds(long stepMs)
    {
        var starts = Table.StartMs;
        var stated = Table.Values(EndColumn);
        var quality = Table.Quality(EndColumn);
        var ends = new long[starts.Length];
        for (var i = 0; i < ends.Length; i++)
            ends[i] = quality[i].HasFlag(Quality.Missing) ? starts[i] + stepMs : (long)stated[i];
        if (NameLastDays(starts, ends))
        {
            _problems.Note(_layout.FirstDataLine, _layout.Stamp.EndIndex + 1, _layout.Columns[_layout.Stamp.EndIndex].Header,
                "ends that name the last day of a period", "ends of intervals; the day after each begins where the next row does, so each period was read to the end of its last day");
            for (var i = 0; i < ends.Length; i++)
                if (!quality[i].HasFlag(Quality.Missing)) ends[i] = DayAfter(ends[i]);
        }
        CutOverlaps(starts, ends);
        return ends;
    }

    private void CutOverlaps(ReadOnlySpan<long> starts, long[] ends)
    {
        var overlaps = IntervalOverlaps.Cut(starts, ends);
        for (var c = 0; c < Values.Count && overlaps.Cuts.Count > 0; c++)
        {
            // States of a counter and power need no interval of their own.
            if (!Values[c].IsEnergy || Values[c].Meaning.Kind is not (ColumnKind.Energy or ColumnKind.Net)) continue;
            overlaps.Report(Values[c].Name, Table.Values(c), isCut: false, Table.LineOf, _problems);
            foreach (var (at, _) in overlaps.Cuts)
                if (!Table.Quality(c)[at].HasFlag(Quality.Missing)) Table.Flag(at, c, Quality.Doubtful);
        }
    }

    /// <summary>Whether periods of days are written with their last day: then the next period begins on the day after, or a period of one day ends on the day it begins.</summary>
    private bool NameLastDays(ReadOnlySpan<long> starts, long[] ends)
    {
        if (_endsAreTimes) return false;
        var dayAfter = 0;
        for (var i = 0; i + 1 < ends.Length; i++)
            if (ends[i] < starts[i + 1] && DayAfter(ends[i]) == starts[i + 1]) dayAfter++;
        return _endIsLastDay || dayAfter * 2 > ends.Length - 1;
    }

    private long DayAfter(long ms) => LocalDays.StartOf(NodaTime.Instant.FromUnixTimeMilliseconds(ms).InZone(DayClock).Date.PlusDays(1), DayClock).ToUnixTimeMilliseconds();

    private void TakeEnd(ReadOnlySpan<string> fields, long startMs, int row, int line)
    {
        var index = _layout.Stamp.EndIndex;
        if (index < fields.Length && TryStampText(fields[index], out var end))
        {
            _endsAreTimes |= end.Fineness != StampFineness.Day;
            long endMs;
            if (end.OffsetMinutes is { } offset) endMs = end.LocalMs - (offset * 60_000L);
            else if (_zone is null) throw Throw.NeedsZone(_problems.File, line, index + 1, fields[index]);
            else endMs = LocalInstantAfter(end.LocalMs, startMs);
            _endIsLastDay |= endMs == startMs && end.Fineness == StampFineness.Day;
            if (endMs > startMs || (endMs == startMs && end.Fineness == StampFineness.Day))
            {
                Table.Set(row, EndColumn, endMs, Quality.Good);
                return;
            }
        }
        _problems.Doubtful(line, index + 1, index < fields.Length ? fields[index] : "", "an end that is no time after the start", "a later time; the row got the length of the others");
    }

    /// <summary>The first instant after the start at which the wall clock shows a time: an end needs no order of rows to be told.</summary>
    private long LocalInstantAfter(long localMs, long startMs)
    {
        var map = _zone!.MapLocal(StampClock.LocalOf(localMs));
        if (map.Count == 0) return map.LateInterval.Start.ToUnixTimeMilliseconds();
        var first = map.First().ToInstant().ToUnixTimeMilliseconds();
        return first > startMs ? first : map.Last().ToInstant().ToUnixTimeMilliseconds();
    }
}
