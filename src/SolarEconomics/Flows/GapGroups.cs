using NodaTime;

namespace SolarEconomics;

/// <summary>Bounds missing intervals by the counter readings before and after them.</summary>
internal static class GapGroups
{
    /// <summary>Groups a device's missing intervals by the pair of counter readings around them.</summary>
    /// <param name="record">The device.</param>
    /// <param name="known">Which intervals count as known: all that the record knows, or none where only counters may be used.</param>
    /// <param name="onePair">Use the first and the last reading only: right where nothing is known between, as every pair adds its own days of doubt.</param>
    /// <param name="grid">The grid.</param>
    /// <param name="zone">The clock of the reading dates.</param>
    /// <param name="doubtful">Receives a sentence for every pair of readings that cannot be true and is left out.</param>
    internal static IReadOnlyList<GapGroup> Of(GenerationRecord record, bool[] known, bool onePair, IntervalGrid grid,
        DateTimeZone zone, ICollection<string> doubtful)
    {
        var sums = new RunningSums(record, known);
        var marks = Marks(record, grid, zone);
        if (onePair && marks.Count > 2) marks = [marks[0], marks[^1]];
        var groups = new List<GapGroup>();
        var from = 0;
        for (var k = 0; k < marks.Count; k++)
        {
            // Missing intervals before the first mark, then between each pair, each belonging to the window its mark's day starts.
            AddGroup(groups, record, known, from, marks[k].Nominal, k == 0 ? null : (marks[k - 1], marks[k]), sums, doubtful);
            from = marks[k].Nominal;
        }
        AddGroup(groups, record, known, from, grid.Count, null, sums, doubtful);
        return groups;
    }

    private static void AddGroup(List<GapGroup> groups, GenerationRecord record, bool[] known, int from, int to,
        (Mark Before, Mark After)? window, RunningSums sums, ICollection<string> doubtful)
    {
        var missing = Enumerable.Range(from, Math.Max(0, to - from)).Where(i => !known[i]).ToArray();
        if (missing.Length == 0) return;
        // An interval may be covered in part: that part is certain, unless the interval readings are to be left aside.
        var floor = ReferenceEquals(known, record.Series.Known) ? missing.Sum(i => record.Series.Kwh[i]) : 0;
        var roof = missing.Sum(i => record.CeilingKwh[i]);
        if (window is not var (before, after) || after.Kwh is not { } last || before.Kwh is not { } first)
        {
            groups.Add(new GapGroup(missing, floor, roof));
            return;
        }
        var counted = last >= first ? last - first : last;
        // After a reset the counter tells only what came later: a lower end, no upper one.
        var wasReset = last < first;
        // The outer window holds all that the two readings can span, the inner window what they must span.
        var otherMissing = sums.MissingCeiling(before.Earliest, after.Latest) - sums.MissingCeiling(from, to);
        var low = Math.Max(floor, counted - sums.Known(before.Earliest, after.Latest) - otherMissing);
        var outsideInner = sums.MissingCeiling(from, to) - sums.MissingCeiling(Math.Max(from, before.Latest), Math.Min(to, after.Earliest));
        var high = wasReset ? roof : Math.Min(roof, counted - sums.Known(before.Latest, after.Earliest) + outsideInner);
        if (low > high + 1e-9 || high < floor - 1e-9 || low > roof + 1e-9)
        {
            doubtful.Add(FormattableString.Invariant(
                $"{record.Device.Name}: counter readings {first:0.#} and {last:0.#} kWh cannot both be true beside the interval readings; they were not used to bound the gap."));
            groups.Add(new GapGroup(missing, floor, roof));
            return;
        }
        groups.Add(new GapGroup(missing, low, Math.Max(low, high)));
    }

    private static List<Mark> Marks(GenerationRecord record, IntervalGrid grid, DateTimeZone zone)
    {
        var marks = new List<Mark>();
        if (record.Counter is not { } counter) return marks;
        if (record.Device.InService is { } first) marks.Add(Mark.Of(first, 0, counter.OpeningKwh, grid, zone));
        foreach (var reading in counter.Readings)
        {
            if (record.Device.InService is { } start && reading.Date <= start) continue;
            marks.Add(Mark.Of(reading.Date, reading.DaysUncertain, reading.Kwh, grid, zone, wholeDay: true));
        }
        return marks;
    }

    /// <summary>A counter reading on the grid: the earliest and latest interval before which it can have been taken.</summary>
    private readonly record struct Mark(int Earliest, int Latest, int Nominal, double? Kwh)
    {
        internal static Mark Of(LocalDate day, int uncertain, double kwh, IntervalGrid grid, DateTimeZone zone, bool wholeDay = false)
        {
            var earliest = IndexOf(day.PlusDays(-uncertain), grid, zone);
            var latest = IndexOf(day.PlusDays(uncertain + (wholeDay ? 1 : 0)), grid, zone);
            // A reading outside the grid still counts, but what lies outside is in no interval: it bounds nothing here.
            var outside = zone.AtStartOfDay(day.PlusDays(-uncertain)).ToInstant() < grid.Start
                || zone.AtStartOfDay(day.PlusDays(uncertain)).ToInstant() > grid.End;
            return new Mark(earliest, latest, latest, outside ? null : kwh);
        }

        private static int IndexOf(LocalDate day, IntervalGrid grid, DateTimeZone zone)
        {
            var steps = (zone.AtStartOfDay(day).ToInstant() - grid.Start) / grid.Step;
            return (int)Math.Clamp(Math.Round(steps), 0, grid.Count);
        }
    }

    /// <summary>Sums over index ranges in constant time.</summary>
    private sealed class RunningSums
    {
        private readonly double[] _known;
        private readonly double[] _missingCeiling;

        internal RunningSums(GenerationRecord record, bool[] known)
        {
            _known = new double[known.Length + 1];
            _missingCeiling = new double[known.Length + 1];
            for (var i = 0; i < known.Length; i++)
            {
                _known[i + 1] = _known[i] + (known[i] ? record.Series.Kwh[i] : 0);
                _missingCeiling[i + 1] = _missingCeiling[i] + (known[i] ? 0 : record.CeilingKwh[i]);
            }
        }

        internal double Known(int from, int to) => to > from ? _known[to] - _known[from] : 0;

        internal double MissingCeiling(int from, int to) => to > from ? _missingCeiling[to] - _missingCeiling[from] : 0;
    }
}
