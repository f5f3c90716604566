namespace SolarEconomics;

/// <summary>Decides from the numbers themselves whether they use a decimal point or comma. Where both are possible, the file is refused with both readings.</summary>
internal static class DecimalMark
{
    internal static NumberText Find(string file, CsvTable table, int fields)
    {
        var (commaSure, pointSure) = (false, false);
        string? ambiguous = null;
        var ambiguousMark = '\0';
        char? thousands = null;
        foreach (var row in table.Rows)
        {
            for (var i = 0; i < Math.Min(row.Length, fields); i++)
            {
                if (i == table.StampIndex) continue;
                var text = row[i].Trim();
                if (text.Length == 0 || !text.Any(char.IsAsciiDigit) || text.AsSpan().IndexOfAnyExcept("0123456789.,'’-+  ") >= 0) continue;
                if (StampSniff.IsStamp(text)) continue;
                foreach (var mark in "'’  ")
                    if (text.Contains(mark)) thousands = mark;
                var (points, commas) = (text.Count(c => c == '.'), text.Count(c => c == ','));
                if (points > 0 && commas > 0)
                {
                    if (text.LastIndexOf(',') > text.LastIndexOf('.')) (commaSure, thousands) = (true, '.');
                    else (pointSure, thousands) = (true, ',');
                }
                else if (commas > 1) (pointSure, thousands) = (true, ',');
                else if (points > 1) (commaSure, thousands) = (true, '.');
                else if (commas == 1)
                {
                    if (CanBeThousands(text, ',')) (ambiguous, ambiguousMark) = (ambiguous ?? text, ',');
                    else commaSure = true;
                }
                else if (points == 1)
                {
                    // Between commas a single point is a decimal point: thousands points come with a decimal comma, which would need quotes.
                    if (table.Delimiter != ',' && CanBeThousands(text, '.')) (ambiguous, ambiguousMark) = (ambiguous ?? text, '.');
                    else pointSure = true;
                }
            }
        }
        if (commaSure && pointSure) throw Throw.MixedDecimalMarks(file);
        if (commaSure) return new NumberText(',', thousands);
        if (pointSure) return new NumberText('.', thousands);
        if (ambiguous is not null) throw Throw.AmbiguousNumber(file, ambiguous, ambiguousMark);
        return new NumberText('.', thousands);
    }

    /// <summary>One mark, one to three digits before it without a leading zero, exactly three after: 1.234 or 12,345.</summary>
    private static bool CanBeThousands(string text, char mark)
    {
        var digits = text.AsSpan().TrimStart("+-");
        var at = digits.IndexOf(mark);
        return at is >= 1 and <= 3 && digits.Length - at - 1 == 3 && digits[0] != '0';
    }
}
