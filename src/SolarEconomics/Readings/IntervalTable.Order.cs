using System.Globalization;
using NodaTime;

namespace SolarEconomics;

internal sealed partial class IntervalTable
{
    /// <summary>Sorts the rows by time and makes one of those that stand at the same time. What is put aside is listed with its energy.</summary>
    /// <param name="names">Name of each column, for the messages; <see langword="null"/> for a column that only goes along with others.</param>
    /// <param name="problems">Where to list it.</param>
    /// <returns>Per column, how many further readings stood at a time that already had one.</returns>
    internal int[] PutInOrder(IReadOnlyList<string?> names, ProblemList problems)
    {
        var extra = new int[Columns];
        if (InOrder) return extra;

        var lines = new int[Rows];
        for (var row = 0; row < Rows; row++) lines[row] = LineOf(row);
        var order = new int[Rows];
        for (var row = 0; row < Rows; row++) order[row] = row;
        var starts = StartMs.ToArray();
        Array.Sort(order, (a, b) => starts[a] != starts[b] ? starts[a].CompareTo(starts[b]) : a.CompareTo(b));

        var sortedStart = new long[Rows];
        var sortedLines = new int[Rows];
        var kept = 0;
        var keptRow = new int[Rows];
        var repeats = new bool[Rows];
        for (var i = 1; i < Rows; i++) repeats[order[i]] = starts[order[i]] == starts[order[i - 1]];
        ReportBackwardRows(starts, lines, repeats, problems);
        var same = new RepeatRun[Columns];
        for (var c = 0; c < Columns; c++) same[c] = new RepeatRun(names[c] ?? "", problems);
        foreach (var row in order)
        {
            if (repeats[row])
            {
                for (var c = 0; c < Columns; c++) Merge(c, keptRow[kept - 1], row, lines, names[c], extra, same[c], problems);
                continue;
            }
            (sortedStart[kept], sortedLines[kept], keptRow[kept]) = (starts[row], lines[row], row);
            kept++;
        }
        foreach (var run in same) run.Report();
        for (var c = 0; c < Columns; c++)
        {
            var (values, quality) = (new double[kept], new Quality[kept]);
            for (var i = 0; i < kept; i++) (values[i], quality[i]) = (_values[c][keptRow[i]], _quality[c][keptRow[i]]);
            (_values[c], _quality[c]) = (values, quality);
        }
        Array.Resize(ref sortedStart, kept);
        Stamps = StampColumn.Of(sortedStart);
        Rows = kept;
        _breaks.Clear();
        for (var i = 0; i < kept; i++)
            if (i == 0 || sortedLines[i] != sortedLines[i - 1] + 1) _breaks.Add((i, sortedLines[i]));
        return extra;
    }

    /// <summary>Lists rows that stand after a later one, run by run. A row whose time stands twice is listed as a repeat instead.</summary>
    private void ReportBackwardRows(long[] starts, int[] lines, bool[] repeats, ProblemList problems)
    {
        var latest = long.MinValue;
        var from = -1;
        for (var row = 0; row <= Rows; row++)
        {
            var backward = row < Rows && starts[row] < latest && !repeats[row];
            if (backward && from < 0) from = row;
            if (!backward && from >= 0)
            {
                var found = row - from == 1 ? "a row that is earlier than one before it"
                    : string.Create(CultureInfo.InvariantCulture, $"{row - from} rows up to line {lines[row - 1]} that are earlier than one before them");
                problems.Note(lines[from], 0, IsoOf(starts[from]), found, "rows in the order of time; each was put in its place and counted");
                from = -1;
            }
            if (row < Rows) latest = Math.Max(latest, starts[row]);
        }
    }

    private void Merge(int column, int first, int later, int[] lines, string? name, int[] extra, RepeatRun same, ProblemList problems)
    {
        if (_quality[column][later].HasFlag(SolarEconomics.Quality.Missing)) return;
        if (_quality[column][first].HasFlag(SolarEconomics.Quality.Missing))
        {
            _values[column][first] = _values[column][later];
            _quality[column][first] = _quality[column][later];
            return;
        }
        if (name is null) return;
        extra[column]++;
        _quality[column][first] |= SolarEconomics.Quality.Repeated;
        var (kept, other) = (_values[column][first], _values[column][later]);
        var raw = other.ToString("R", CultureInfo.InvariantCulture);
        var when = IsoOf(Stamps[later]);
        var keptLine = lines[first].ToString(CultureInfo.InvariantCulture);
        if (kept == other)
        {
            same.Add(later, lines[later], lines[first], Stamps[later], other);
            return;
        }
        _quality[column][first] |= SolarEconomics.Quality.Doubtful;
        problems.Doubtful(lines[later], 0, raw, $"\"{name}\" at {when} a second time, with another value than in line {keptLine}",
            "each time once; the first is counted, this one is not", other);
    }

    internal static string IsoOf(long ms) =>
        NodaTime.Text.InstantPattern.General.Format(Instant.FromUnixTimeMilliseconds(ms));
}
