namespace SolarEconomics;

/// <summary>Decides from the numbers themselves whether they use a decimal point or comma. Where both are possible, the file is refused with both readings.</summary>
internal sealed class DecimalMark
{
    private const string Letters = "0123456789.,'’-\u2212+\u00A0\u202F\u2009 ";
    private const string SpaceMarks = "'’\u00A0\u202F\u2009 ";

    private readonly char _delimiter;
    private int _commas;
    private int _points;
    private Cell _firstComma;
    private Cell _firstPoint;
    private char? _thousands;
    private Cell? _ambiguous;
    private char _ambiguousMark;
    private Cell _cell;

    private DecimalMark(char delimiter) => _delimiter = delimiter;

    internal static NumberText Find(string file, CsvTable table, int fields)
    {
        var mark = new DecimalMark(table.Delimiter);
        for (var r = 0; r < table.Rows.Count; r++)
            for (var i = 0; i < Math.Min(table.Rows[r].Length, fields); i++)
                if (i != table.StampIndex) mark.Look(new Cell(table.LineOf(r), i + 1, CellUnit.Bare(table.Rows[r][i]).Trim()));
        return mark.Decide(file);
    }

    private NumberText Decide(string file)
    {
        // A few broken numbers must not decide for all; as many as one in twenty of the other kind are no accident.
        if (Math.Min(_commas, _points) * 20 > Math.Max(_commas, _points)) throw Throw.MixedDecimalMarks(file, _firstComma, _firstPoint);
        if (_commas > _points) return new NumberText(',', _thousands == ',' ? null : _thousands);
        if (_points > 0) return new NumberText('.', _thousands == '.' ? null : _thousands);
        if (_ambiguous is { } cell) throw Throw.AmbiguousNumber(file, cell, _ambiguousMark);
        return new NumberText('.', _thousands);
    }

    private void Look(Cell cell)
    {
        _cell = cell;
        var text = cell.Raw;
        if (text.Length == 0 || !text.Any(char.IsAsciiDigit) || text.AsSpan().IndexOfAnyExcept(Letters) >= 0 || StampSniff.IsStamp(text)) return;
        var space = text.FirstOrDefault(SpaceMarks.Contains);
        if (space != default && (IsNumber(text, '.', space) || IsNumber(text, ',', space))) _thousands = space;
        var (points, commas) = (text.Count(c => c == '.'), text.Count(c => c == ','));
        if (points > 0 && commas > 0)
        {
            if (IsNumber(text, ',', '.')) Comma('.');
            else if (IsNumber(text, '.', ',')) Point(',');
        }
        else if (commas > 1 && IsNumber(text, '.', ',')) Point(',');
        else if (points > 1 && IsNumber(text, ',', '.')) Comma('.');
        else if (commas == 1 && IsNumber(text, ',', space == default ? null : space))
        {
            if (CanBeThousands(text, ',')) (_ambiguous, _ambiguousMark) = (_ambiguous ?? cell, ',');
            else Comma(_thousands);
        }
        else if (points == 1 && IsNumber(text, '.', space == default ? null : space))
        {
            // Between commas a single point is a decimal point: thousands points come with a decimal comma, which would need quotes.
            if (_delimiter != ',' && CanBeThousands(text, '.')) (_ambiguous, _ambiguousMark) = (_ambiguous ?? cell, '.');
            else Point(_thousands);
        }
    }

    private void Comma(char? thousands)
    {
        if (_commas++ == 0) _firstComma = _cell;
        _thousands = thousands ?? _thousands;
    }

    private void Point(char? thousands)
    {
        if (_points++ == 0) _firstPoint = _cell;
        _thousands = thousands ?? _thousands;
    }

    private static bool IsNumber(string text, char mark, char? thousands) => new NumberText(mark, thousands).TryRead(text, out _);

    /// <summary>One mark, one to three digits before it without a leading zero, exactly three after: 1.234 or 12,345.</summary>
    private static bool CanBeThousands(string text, char mark)
    {
        var digits = text.AsSpan().TrimStart("+-");
        var at = digits.IndexOf(mark);
        return at is >= 1 and <= 3 && digits.Length - at - 1 == 3 && digits[0] != '0';
    }
}
