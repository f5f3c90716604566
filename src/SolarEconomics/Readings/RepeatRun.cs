using System.Globalization;

namespace SolarEconomics;

/// <summary>Readings of one column that stand a second time with the same value, row after row: a block that was sent twice is one note, not hundreds.</summary>
/// <param name="name">Name of the column.</param>
/// <param name="problems">Where a run is listed once it is over.</param>
internal sealed class RepeatRun(string name, ProblemList problems)
{
    private int _count;
    private int _lastRow;
    private (int First, int Last, int Kept) _lines;
    private (long First, long Last) _ms;
    private double _first;
    private CompensatedSum _kwh;

    internal void Add(int row, int line, int keptLine, long ms, double value)
    {
        if (_count > 0 && row != _lastRow + 1) Report();
        if (_count++ == 0) (_lines, _ms, _first) = ((line, line, keptLine), (ms, ms), value);
        (_lastRow, _lines.Last, _ms.Last) = (row, line, ms);
        _kwh.Add(value);
    }

    /// <summary>Lists the run so far and begins another.</summary>
    internal void Report()
    {
        if (_count == 0) return;
        var when = IntervalTable.IsoOf(_ms.First);
        var found = _count == 1
            ? string.Create(CultureInfo.InvariantCulture, $"\"{name}\" at {when} a second time, with the same value as in line {_lines.Kept}")
            : string.Create(CultureInfo.InvariantCulture, $"{_count} readings of \"{name}\" from {when} to {IntervalTable.IsoOf(_ms.Last)} a second time up to line {_lines.Last}, with the same values as from line {_lines.Kept} on");
        problems.Note(_lines.First, 0, _first.ToString("R", CultureInfo.InvariantCulture), found, _count == 1 ? "each time once; it was counted once" : "each time once; each was counted once", _kwh.Total);
        (_count, _kwh) = (0, default);
    }
}
