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
        LostClock.Report(rows, problems);
        rows.RecogniseCounters(options);
        var times = Times(rows, layout, problems);
        var channels = new List<Channel>();
        for (var c = 0; c < rows.Values.Count; c++)
        {
            var column = rows.Values[c];
            // A column without a unit that is empty from top to bottom holds nothing that could be lost.
            if (!column.IsEnergy && column.Meaning.Flow == FlowKind.Unknown && !table.Quality(c).ContainsAnyExcept(Quality.Missing))
            {
                if (column.Meaning.Header.Length > 0) problems.Note(0, column.Index + 1, column.Meaning.Header, $"nothing under \"{column.Name}\"", "numbers, or no such column; it was left out");
                continue;
            }
            var channel = column.Meaning.Kind switch
            {
                _ when column.IsPower => PowerColumn.ToEnergy(table, c, times, options.LongestBridge, column, problems),
                ColumnKind.Counter => CounterColumn.ToEnergy(table, c, column, problems),
                ColumnKind.DailyCounter => CounterColumn.OfDaily(table, c, column, problems),
                _ => table.Take(c, times),
            };
            channels.AddRange(Directions.Split(channel, column, options.Plant, extra[c], file, problems));
        }
        return channels;
    }

    private static TimeAxis Times(CsvRows rows, CsvLayout layout, ProblemList problems)
    {
        var stamps = rows.Table.Stamps;
        if (layout.Stamp.Fineness != StampFineness.Time && rows.EndColumn < 0)
            return TimeAxis.OfMilliseconds(stamps.Each, IntervalEnds.OfDays(stamps.Each, layout.Stamp.Fineness, rows.DayClock));
        var step = IntervalEnds.CommonStepMs(stamps);
        if (step is null && rows.EndColumn < 0)
        {
            problems.Doubtful(0, 0, "", "one row only", "two at least, to tell how long an interval is; it is read as an hour");
            step = 3_600_000;
        }
        var stepMs = step ?? 3_600_000;
        if (rows.EndColumn >= 0) return TimeAxis.OfMilliseconds(stamps.Each, rows.StatedEnds(stepMs));
        var isEnd = layout.Stamp.Edge == StampEdge.End;
        // Daily and monthly totals with their midnight written out: a day of 25 hours is one of them.
        if (stepMs >= IntervalEnds.ShortestDayMs && IntervalEnds.AreMidnights(stamps.Each, rows.DayClock))
        {
            return isEnd ? TimeAxis.OfMilliseconds(IntervalEnds.OfDaysBefore(stamps.Each, rows.DayClock), stamps.Each)
                : TimeAxis.OfMilliseconds(stamps.Each, IntervalEnds.OfDays(stamps.Each, StampFineness.Day, rows.DayClock));
        }
        if (TimeAxis.OfStamps(stamps, stepMs, isEnd ? -1 : 0) is { } axis) return axis;
        return isEnd ? TimeAxis.OfMilliseconds(IntervalEnds.OfEnds(stamps.Each, stepMs), stamps.Each) : TimeAxis.OfMilliseconds(stamps.Each, IntervalEnds.OfStarts(stamps.Each, stepMs));
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
}
