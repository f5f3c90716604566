using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>Turns a sheet into a table in text form: a line for each row, at the row's number, and remembers what the sheet hides or merges.</summary>
internal sealed class SheetTable(WorkbookArchive book, WorkbookSheet sheet, string name)
{
    /// <summary>What a sheet can hold, so that a broken row number cannot make billions of empty rows.</summary>
    private const int MostRows = 1_048_576;
    private const long MostCells = 20_000_000;
    private const int CancelEvery = 1024;

    private readonly List<Problem> _findings = [];
    private readonly Queue<MergedArea> _areas = MergedArea.Of(book, sheet);
    private readonly List<MergedArea> _open = [];
    private string[] _fields = [];
    private int _mergedNumbers;
    private (int Count, int First) _hidden;

    /// <summary>Formulas whose value was not saved with them.</summary>
    internal int OpenFormulas { get; private set; }

    /// <summary>What the sheet does not show, and numbers in merged cells.</summary>
    internal IReadOnlyList<Problem> Findings => _findings;

    internal void Write(TableText text, CancellationToken cancel)
    {
        using var rows = new SheetRows(book, sheet);
        var cells = 0L;
        while (rows.Read())
        {
            if (text.Rows % CancelEvery == 0) cancel.ThrowIfCancellationRequested();
            cells += rows.Cells.Count + 1;
            if (rows.Number > MostRows || cells > MostCells) throw Throw.TooMuch(name);
            while (text.Rows < rows.Number - 1) text.Write([]);
            Lay(rows);
            text.Write(_fields);
            if (rows.Hidden && rows.Cells.Count > 0) _hidden = (_hidden.Count + 1, _hidden.Count == 0 ? rows.Number : _hidden.First);
        }
        OpenFormulas = rows.OpenFormulas;
        Tell(rows);
    }

    /// <summary>The fields of a row, as many as the widest row so far has: a row that ends early has empty cells, not too few.</summary>
    private void Lay(SheetRows row)
    {
        var width = row.Cells.Count == 0 ? 0 : row.Cells[^1].Column + 1;
        if (width > _fields.Length) _fields = new string[width];
        Array.Fill(_fields, "");
        foreach (var cell in row.Cells) _fields[cell.Column] = cell.Text;
        if (_areas.Count > 0 || _open.Count > 0) FillMerged(row);
    }

    private void FillMerged(SheetRows row)
    {
        _open.RemoveAll(a => a.Bottom < row.Number);
        while (_areas.Count > 0 && _areas.Peek().Top <= row.Number)
        {
            var area = _areas.Dequeue();
            if (area.Bottom < row.Number) continue;
            area.First = area.Top == row.Number && row.Cells.FindIndex(c => c.Column == area.Left) is >= 0 and var at ? row.Cells[at] : null;
            _open.Add(area);
            if (area is { First: { IsNumber: true } number } && area.Bottom > area.Top) TellNumber(area, number);
        }
        foreach (var area in _open)
            if (area.First is { IsNumber: false } first) Fill(area, first.Text, row);
    }

    /// <summary>A text or a time holds for all rows that it is shown in, and for all its columns where it stands over some of several: a title over the whole table does not.</summary>
    private void Fill(MergedArea area, string text, SheetRows row)
    {
        var right = row.Cells.Exists(c => c.Column < area.Left || c.Column > area.Right) ? Math.Min(area.Right, _fields.Length - 1) : area.Left;
        for (var column = area.Left; column <= right && column < _fields.Length; column++)
            if (_fields[column].Length == 0) _fields[column] = text;
    }

    private void TellNumber(MergedArea area, SheetCell number)
    {
        if (_mergedNumbers++ >= ProblemsShown) return;
        var cells = $"{SheetCell.NameOf(area.Left, area.Top)}:{SheetCell.NameOf(area.Right, area.Bottom)}";
        _findings.Add(new Problem(name, area.Top, area.Left + 1, number.Text, $"one number in the merged cells {cells}", "a number in each row; it is counted once, in the first row, and the others count as missing", Severity.Doubtful));
    }

    private const int ProblemsShown = 20;

    private void Tell(SheetRows rows)
    {
        if (sheet.Hidden) _findings.Add(new Problem(name, 0, 0, "", "a sheet that the workbook hides", "sheets that are shown; it was read like the others", Severity.Note));
        if (_hidden.Count > 0)
            _findings.Add(new Problem(name, _hidden.First, 0, "", string.Create(CultureInfo.InvariantCulture, $"{_hidden.Count} rows that the sheet hides, the first row {_hidden.First}"), "rows that are shown; a filter hides without removing, so they were read like the others", Severity.Note));
        foreach (var (from, to) in rows.HiddenColumns.Where(c => c.From < _fields.Length))
            _findings.Add(new Problem(name, 0, from + 1, "", to - from > 1 ? $"columns {Letters(from)} to {Letters(Math.Min(to, _fields.Length) - 1)}, which the sheet hides" : $"column {Letters(from)}, which the sheet hides", "columns that are shown; they were read like the others", Severity.Note));
        if (_mergedNumbers > ProblemsShown)
            _findings.Add(new Problem(name, 0, 0, "", string.Create(CultureInfo.InvariantCulture, $"{_mergedNumbers - ProblemsShown} more numbers in merged cells"), "a number in each row; each is counted once, in its first row", Severity.Doubtful));
    }

    private static string Letters(int column) => SheetCell.NameOf(column, 1)[..^1];
}
