namespace SolarEconomics;

/// <summary>Rows of a table of readings while it is read: one time, several columns. Arrays are filled in place, with no object per row.</summary>
internal sealed partial class IntervalTable
{
    private const int Few = 64;

    private int _capacity;
    private readonly double[][] _values;
    private readonly Quality[][] _quality;

    // Line numbers as breakpoints: rows follow each other line by line except where lines were left out.
    private readonly List<(int Row, int Line)> _breaks = [];
    private int _nextLine;

    internal IntervalTable(int columns, int expectedRows)
    {
        _capacity = Math.Max(Few, expectedRows);
        Stamps = new StampColumn(_capacity);
        // Not set to zero first: every row sets its cells, missing ones too.
        _values = new double[columns][];
        _quality = new Quality[columns][];
        for (var c = 0; c < columns; c++)
        {
            _values[c] = GC.AllocateUninitializedArray<double>(_capacity);
            _quality[c] = GC.AllocateUninitializedArray<Quality>(_capacity);
        }
    }

    internal int Rows { get; private set; }

    internal int Columns => _values.Length;

    /// <summary>Whether every row so far is later than the one before.</summary>
    internal bool InOrder => Stamps.InOrder;

    internal StampColumn Stamps { get; private set; }

    internal ReadOnlySpan<long> StartMs => Stamps.Each;

    internal ReadOnlySpan<double> Values(int column) => _values[column].AsSpan(0, Rows);

    internal ReadOnlySpan<Quality> Quality(int column) => _quality[column].AsSpan(0, Rows);

    /// <summary>Adds a row whose cells are all missing until set.</summary>
    internal int Add(long startMs, int line)
    {
        var row = Rows;
        if (row == _capacity) Grow();
        Stamps.Add(startMs);
        if (line != _nextLine) _breaks.Add((row, line));
        _nextLine = line + 1;
        for (var c = 0; c < _quality.Length; c++) (_values[c][row], _quality[c][row]) = (0, SolarEconomics.Quality.Missing);
        Rows = row + 1;
        return row;
    }

    /// <summary>Adds a row of numbers already in kWh; a cell that is not present is missing.</summary>
    internal int Add(long startMs, int line, ReadOnlySpan<double> kwh, ReadOnlySpan<bool> present)
    {
        var row = Rows;
        if (row == _capacity) Grow();
        Stamps.Add(startMs);
        if (line != _nextLine) _breaks.Add((row, line));
        _nextLine = line + 1;
        for (var c = 0; c < kwh.Length; c++)
            (_values[c][row], _quality[c][row]) = present[c] ? (kwh[c], SolarEconomics.Quality.Good) : (0, SolarEconomics.Quality.Missing);
        Rows = row + 1;
        return row;
    }

    /// <summary>Columns of values with room behind the last row, to be filled in place and then taken by <see cref="Take(ReadOnlySpan{long}, int)"/>.</summary>
    /// <returns>The columns, and how many rows there is room for.</returns>
    internal (double[][] Values, int Room) Room()
    {
        if (Rows == _capacity) Grow();
        return (_values, _capacity - Rows);
    }

    /// <summary>Takes rows whose values were written behind the last one, all of them as good readings.</summary>
    internal void Take(ReadOnlySpan<long> startMs, int firstLine)
    {
        if (startMs.IsEmpty) return;
        if (firstLine != _nextLine) _breaks.Add((Rows, firstLine));
        _nextLine = firstLine + startMs.Length;
        Stamps.Add(startMs);
        foreach (var quality in _quality) quality.AsSpan(Rows, startMs.Length).Clear();
        Rows += startMs.Length;
    }

    /// <summary>Makes the cells of a column missing, from a row on, whose value says so.</summary>
    internal void MakeMissing(int column, int fromRow, Func<double, bool> isMissing)
    {
        for (var row = fromRow; row < Rows; row++)
            if (isMissing(_values[column][row])) Set(row, column, 0, SolarEconomics.Quality.Missing);
    }

    /// <summary>Hands the arrays of a column over as they are, without a copy. The table gives the column up by it.</summary>
    internal ColumnEnergy Take(int column, TimeAxis times) => new(times, _values[column], _quality[column]);

    internal void Set(int row, int column, double value, Quality quality)
    {
        _values[column][row] = value;
        _quality[column][row] = quality;
    }

    internal void Flag(int row, int column, Quality quality) => _quality[column][row] |= quality;

    /// <summary>Changes every value of a column, once its unit is known.</summary>
    internal void Scale(int column, Func<double, double> scale)
    {
        foreach (ref var value in _values[column].AsSpan(0, Rows)) value = scale(value);
    }

    /// <summary>The line of a row, as long as the table is in the order of the file.</summary>
    internal int LineOf(int row)
    {
        var (low, high) = (0, _breaks.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (_breaks[middle].Row <= row) low = middle;
            else high = middle - 1;
        }
        return _breaks[low].Line + (row - _breaks[low].Row);
    }

    private void Grow()
    {
        _capacity = checked(_capacity * 2);
        for (var c = 0; c < _values.Length; c++)
        {
            Array.Resize(ref _values[c], _capacity);
            Array.Resize(ref _quality[c], _capacity);
        }
    }
}
