using System.Globalization;
using System.Xml;

namespace SolarEconomics.Files;

/// <summary>Reads the rows of a sheet one after the other, streamed.</summary>
internal sealed class SheetRows(WorkbookArchive book, WorkbookSheet sheet) : IDisposable
{
    private readonly XmlReader _xml = Xml.Open(book.OpenPart(sheet.Path));
    private readonly List<SheetCell> _cells = [];

    /// <summary>Number of the row, counted from 1.</summary>
    internal int Number { get; private set; }

    /// <summary>Whether the workbook does not show the row.</summary>
    internal bool Hidden { get; private set; }

    /// <summary>Its cells that hold something, from left to right.</summary>
    internal List<SheetCell> Cells => _cells;

    /// <summary>Columns that the workbook does not show, counted from 0, as spans with their end excluded.</summary>
    internal List<(int From, int To)> HiddenColumns { get; } = [];

    /// <summary>Formulas whose value was not saved with them.</summary>
    internal int OpenFormulas { get; private set; }

    /// <summary>Goes on to the next row; false where there is none.</summary>
    internal bool Read()
    {
        while (_xml.Read())
        {
            if (_xml.Begins("col") && _xml.IsSet("hidden")) HiddenColumns.Add(((Whole("min") ?? 1) - 1, Whole("max") ?? 1));
            if (!_xml.Begins("row")) continue;
            var number = Whole("r") ?? Number + 1;
            if (number <= Number) throw new InvalidDataException(string.Create(CultureInfo.InvariantCulture, $"row {number} of sheet {sheet.Name} stands behind row {Number}"));
            (Number, Hidden) = (number, _xml.IsSet("hidden"));
            ReadCells();
            return true;
        }
        return false;
    }

    public void Dispose() => _xml.Dispose();

    private void ReadCells()
    {
        _cells.Clear();
        if (_xml.IsEmptyElement) return;
        var column = -1;
        while (_xml.Read() && !_xml.Ends("row"))
        {
            if (!_xml.Begins("c")) continue;
            column = _xml.Attribute("r") is { } name && SheetCell.TryPlace(name, out var stated, out _) ? stated : column + 1;
            if (column >= SheetCell.MostColumns) throw new InvalidDataException(string.Create(CultureInfo.InvariantCulture, $"row {Number} of sheet {sheet.Name} has more columns than a sheet"));
            if (CellAt(column) is { Text.Length: > 0 } cell) _cells.Add(cell);
        }
    }

    private SheetCell? CellAt(int column)
    {
        var (type, style) = (_xml.Attribute("t"), Whole("s") ?? 0);
        if (_xml.IsEmptyElement) return null;
        var (value, formula) = (default(string), default(string));
        while (_xml.Read() && !_xml.Ends("c"))
        {
            if (_xml.Begins("v")) value = TextOfElement();
            else if (_xml.Begins("f")) formula = TextOfElement();
            else if (_xml.Begins("is")) value = SharedTexts.TextIn(_xml);
        }
        if (string.IsNullOrEmpty(value) && formula is not null && type is not "str")
        {
            OpenFormulas++;
            return new SheetCell(column, "=" + formula, IsNumber: false);
        }
        return value is null ? null : Cell(column, value, type, style);
    }

    private SheetCell Cell(int column, string value, string? type, int style)
    {
        switch (type)
        {
            case "s": return new SheetCell(column, TextAt(value), IsNumber: false);
            case "str" or "inlineStr" or "e" or "d": return new SheetCell(column, value, IsNumber: false);
            case "b": return new SheetCell(column, value, IsNumber: true);
        }
        if (!double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number)) return new SheetCell(column, value, IsNumber: false);
        if (book.Formats.IsTime(style) && CellText.TimeOf(number, book.From1904) is { } time) return new SheetCell(column, time, IsNumber: false);
        return new SheetCell(column, number.ToString("R", CultureInfo.InvariantCulture), IsNumber: true);
    }

    private string TextAt(string index) =>
        int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < book.Texts.Count ? book.Texts[at]
            : throw new InvalidDataException($"a cell of row {Number.ToString(CultureInfo.InvariantCulture)} of sheet {sheet.Name} names text {index}, which is not there");

    private string TextOfElement()
    {
        if (_xml.IsEmptyElement) return "";
        var (name, text) = (_xml.LocalName, "");
        while (_xml.Read() && !_xml.Ends(name))
            if (_xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace) text += _xml.Value;
        return text;
    }

    private int? Whole(string attribute) => int.TryParse(_xml.Attribute(attribute), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
