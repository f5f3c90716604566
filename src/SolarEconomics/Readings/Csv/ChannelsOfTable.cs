using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Makes channels of a table that is read: order, ends of intervals, power and counters to energy, devices, doubts.</summary>
internal static class ChannelsOfTable
{
    internal static IReadOnlyList<Channel> Make(CsvRows rows, CsvLayout layout, ReadOptions options, ProblemList problems, string file)
    {
        var table = rows.Table;
        ReportRepeatedHours(rows, problems, options);
        var extra = table.PutInOrder(rows.EndColumn >= 0 ? [.. rows.Values.Select(v => v.Name), null] : [.. rows.Values.Select(v => v.Name)], problems);
        rows.RecogniseCounters(options);
        var (startMs, endMs) = Edges(rows, layout, problems);
        var starts = ToInstants(startMs);
        var ends = ToEnds(starts, startMs, endMs);
        var channels = new List<Channel>();
        for (var c = 0; c < rows.Values.Count; c++)
        {
            var column = rows.Values[c];
            var channel = column.Meaning.Kind switch
            {
                ColumnKind.Power => PowerColumn.ToEnergy(table, c, startMs, endMs, options.LongestBridge, column, problems),
                ColumnKind.Counter => CounterColumn.ToEnergy(table, c, column, problems),
                ColumnKind.DailyCounter => CounterColumn.OfDaily(table, c, column, problems),
                _ => table.Take(c, starts, ends),
            };
            channels.AddRange(Directions.Split(channel, column, options.Plant, extra[c], file, problems));
        }
        return channels;
    }

    private static (long[] StartMs, long[] EndMs) Edges(CsvRows rows, CsvLayout layout, ProblemList problems)
    {
        var stamps = rows.Table.StartMs;
        if (layout.Stamp.Fineness != StampFineness.Time && rows.EndColumn < 0)
            return (stamps.ToArray(), IntervalEnds.OfDays(stamps, layout.Stamp.Fineness, rows.DayClock));
        var step = IntervalEnds.CommonStepMs(stamps);
        if (step is null && rows.EndColumn < 0)
        {
            problems.Doubtful(0, 0, "", "one row only", "two at least, to tell how long an interval is; it is read as an hour");
            step = 3_600_000;
        }
        var stepMs = step ?? 3_600_000;
        if (rows.EndColumn >= 0) return (stamps.ToArray(), rows.StatedEnds(stepMs));
        return layout.Stamp.Edge == StampEdge.End
            ? (IntervalEnds.OfEnds(stamps, stepMs), stamps.ToArray())
            : (stamps.ToArray(), IntervalEnds.OfStarts(stamps, stepMs));
    }

    private static void ReportRepeatedHours(CsvRows rows, ProblemList problems, ReadOptions options)
    {
        if (options.StampPolicy.Repeated != RepeatedHour.ByRowOrder) return;
        foreach (var pass in rows.Clock.RepeatedHours)
        {
            var when = StampClock.LocalOf(pass.FromLocalMs).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
            if (!pass.SecondSeen)
                problems.Doubtful(pass.Line, 1, when, $"the time that {options.Zone?.Id} showed twice from {when} on only once", "rows for both; they are read as the first pass, and the second is a gap");
            else if (pass.InOrder && !pass.ThirdSeen)
                problems.Note(pass.Line, 1, when, $"the time that {options.Zone?.Id} showed twice from {when} on", "rows for both in their order; so they stand, and each is counted once");
        }
    }

    /// <summary>Ends, most of which are the starts of the next rows.</summary>
    private static Instant[] ToEnds(Instant[] starts, long[] startMs, long[] endMs)
    {
        var ends = new Instant[starts.Length];
        for (var i = 0; i < ends.Length; i++)
            ends[i] = i + 1 < ends.Length && startMs[i + 1] == endMs[i] ? starts[i + 1] : Instant.FromUnixTimeMilliseconds(endMs[i]);
        return ends;
    }

    internal static Instant[] ToInstants(ReadOnlySpan<long> ms)
    {
        // Adding the step again is several times quicker than dividing each time into days and the rest.
        var instants = new Instant[ms.Length];
        var (stepMs, step) = (0L, Duration.Zero);
        for (var i = 0; i < instants.Length; i++)
        {
            if (i > 0 && ms[i] - ms[i - 1] == stepMs)
            {
                instants[i] = instants[i - 1] + step;
                continue;
            }
            instants[i] = Instant.FromUnixTimeMilliseconds(ms[i]);
            if (i == 0) continue;
            stepMs = ms[i] - ms[i - 1];
            step = Duration.FromMilliseconds(stepMs);
        }
        return instants;
    }
}
