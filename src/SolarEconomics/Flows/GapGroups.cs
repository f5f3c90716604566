using NodaTime;

namespace SolarEconomics;

/// <summary>Bounds missing intervals by the counter readings before and after them.</summary>
internal static class GapGroups
{
    /// <summary>Groups the missing intervals of one place by the pair of counter readings around them.</summary>
    /// <param name="record">The place.</param>
    /// <param name="known">Which intervals count as known: all that the record knows, or none where only counters may be used.</param>
    /// <param name="onePair">Use each counter's first and last reading only: right where nothing is known between, as every pair adds its own days of doubt.</param>
    /// <param name="grid">The grid.</param>
    /// <param name="zone">The clock of the reading dates.</param>
    /// <param name="doubtful">Receives a sentence for every pair of readings that cannot be true and is left out.</param>
    internal static IReadOnlyList<GapGroup> Of(GenerationRecord record, bool[] known, bool onePair, IntervalGrid grid,
        DateTimeZone zone, ICollection<string> doubtful)
    {
        var sums = new RunningSums(record, known);
        var groups = new List<GapGroup>();
        var done = 0;
        foreach (var service in record.Counters)
        {
            AddGroup(groups, record, known, done, service.From, sums);
            var from = service.From;
            foreach (var window in Windows(service, onePair, sums, grid, zone))
            {
                AddGroup(groups, record, known, from, window.Before.Nominal, sums);
                AddGroup(groups, record, known, Math.Max(from, window.Before.Nominal), window.After.Nominal, sums, window, doubtful);
                from = Math.Max(from, window.After.Nominal);
            }
            AddGroup(groups, record, known, from, service.To, sums);
            done = Math.Max(done, service.To);
        }
        AddGroup(groups, record, known, done, known.Length, sums);
        return groups;
    }

    private static void AddGroup(List<GapGroup> groups, GenerationRecord record, bool[] known, int from, int to, RunningSums sums,
        CounterWindow? window = null, ICollection<string>? doubtful = null)
    {
        var missing = Enumerable.Range(from, Math.Max(0, to - from)).Where(i => !known[i]).ToArray();
        if (missing.Length == 0) return;
        // An interval may be covered in part: that part is certain, unless the interval readings are to be left aside.
        var floor = ReferenceEquals(known, record.Series.Known) ? missing.Sum(i => record.Series.Kwh[i]) : 0;
        var roof = sums.MissingCeiling(from, to);
        if (window is null)
        {
            groups.Add(new GapGroup(missing, floor, roof));
            return;
        }
        // The outer window holds all that two readings can span, the inner window what they must span.
        var (before, after) = (window.Before, window.After);
        var missingBeside = sums.MissingCeiling(before.Earliest, after.Latest) - sums.MissingCeiling(Math.Max(from, before.Earliest), Math.Min(to, after.Latest));
        var low = Math.Max(floor, window.LowKwh - sums.Known(before.Earliest, after.Latest) - missingBeside);
        var outsideInner = roof - sums.MissingCeiling(Math.Max(from, before.Latest), Math.Min(to, after.Earliest));
        var high = Math.Min(roof, window.HighKwh - sums.Known(before.Latest, after.Earliest) + outsideInner);
        if (low > high + 1e-6 || low > roof + 1e-6)
        {
            doubtful?.Add(FormattableString.Invariant(
                $"{record.Device.Name}: the counter's readings of {before.Kwh:0.#} and {after.Kwh:0.#} kWh do not agree with the interval readings between; they were not used to bound the gap."));
            groups.Add(new GapGroup(missing, floor, roof));
            return;
        }
        groups.Add(new GapGroup(missing, low, Math.Max(low, high)));
    }

    /// <summary>The pairs of readings of one counter that lie on the grid, with what each says was counted between.</summary>
    private static List<CounterWindow> Windows(CountedService service, bool onePair, RunningSums sums, IntervalGrid grid, DateTimeZone zone)
    {
        var marks = new List<CounterMark>();
        if (service.Device.InService is { } first && !CounterMark.IsOutside(first, 0, grid, zone))
            marks.Add(CounterMark.AtStartOf(first, service.Counter.OpeningKwh, grid, zone));
        foreach (var reading in service.Counter.Readings)
        {
            if (service.Device.InService is { } start && reading.Date <= start) continue;
            if (!CounterMark.IsOutside(reading.Date, reading.DaysUncertain, grid, zone)) marks.Add(CounterMark.Of(reading, grid, zone));
        }
        var windows = new List<CounterWindow>();
        for (var k = 1; k < marks.Count; k++)
        {
            var (before, after) = (marks[k - 1], marks[k]);
            // After a reset the counter tells what came later; what came before it since the last reading is anything up to the ceiling.
            var wasReset = after.Kwh < before.Kwh;
            var low = wasReset ? after.Kwh : after.Kwh - before.Kwh;
            windows.Add(new CounterWindow(before, after, low, low + (wasReset ? sums.Ceiling(before.Earliest, after.Latest) : 0)));
        }
        return onePair && windows.Count > 1
            ? [new CounterWindow(windows[0].Before, windows[^1].After, windows.Sum(w => w.LowKwh), windows.Sum(w => w.HighKwh))]
            : windows;
    }
}
