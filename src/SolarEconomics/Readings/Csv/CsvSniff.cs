using System.Text;

namespace SolarEconomics;

/// <summary>Decides how a table is laid out from its first 64 KiB: delimiter, headers, times, numbers. What is not certain is refused, not guessed.</summary>
internal static class CsvSniff
{
    private const int LinesLookedAt = 400;
    internal static readonly char[] Delimiters = [',', ';', '\t', '|'];

    /// <summary>Whether some line of the head holds a time and a number: enough to call it a table of readings.</summary>
    internal static bool LooksLikeTable(RecordFile file)
    {
        var encoding = CsvText.EncodingOf(file.Head);
        var lines = CsvText.HeadLines(file, encoding);
        return Find(lines, StampSniff.IsStamp) is not null || TimePartsSniff.Find(lines) is not null || SerialDates.Find(lines) is not null;
    }

    internal static CsvLayout Layout(RecordFile file, ReadOptions options)
    {
        var encoding = CsvText.EncodingOf(file.Head);
        var neverClosed = new List<(int Line, int Field, string Raw)>();
        var lines = CsvText.HeadLines(file, encoding, (line, field, raw) => neverClosed.Add((line, field, raw)));
        var table = Find(lines, StampSniff.IsStamp) ?? TimePartsSniff.Find(lines) ?? SerialDates.Table(file, lines, options) ?? throw Throw.NoTable(file.Name, lines);
        var rows = table.Rows;
        var (headers, unitRow) = Headers(lines, table);
        var fields = headers.Length > 0 ? headers.Length : rows.Max(r => r.Length);
        var numbers = DecimalMark.Find(file.Name, table, fields);
        var stamp = StampSniff.Find(file, encoding, table, headers, options);
        var columns = new ColumnMeaning[fields];
        for (var i = 0; i < fields; i++)
        {
            var header = i < headers.Length ? headers[i] : "";
            columns[i] = Meaning(i, header, unitRow, rows, stamp, numbers, options);
        }
        var longForm = LongForm.Find(table, headers, stamp, numbers);
        if (longForm is null) RefuseUnknownCorrections(file.Name, headers, options);
        else MarkNames(columns, longForm);
        return new CsvLayout
        {
            Encoding = encoding,
            Delimiter = table.Delimiter,
            Numbers = numbers,
            FirstDataLine = table.FirstLine,
            Columns = columns,
            Stamp = stamp,
            Long = longForm,
            NeverClosed = [.. neverClosed.Where(n => n.Line < table.FirstLine)],
        };
    }

    private static void MarkNames(ColumnMeaning[] columns, LongForm form)
    {
        foreach (var (index, what) in new[] { (form.NameIndex, "the name of the row's channel"), (form.UnitIndex, "the unit of the row's number") })
            if (index >= 0)
                columns[index] = columns[index] with { Kind = ColumnKind.Ignored, Flow = FlowKind.Unknown, Reason = $"column {index + 1} \"{columns[index].Header}\" is read as {what}, as the table holds one reading in a row" };
    }

    private static ColumnMeaning Meaning(int index, string header, string[]? unitRow, IReadOnlyList<string[]> rows,
        StampColumns stamp, NumberText numbers, ReadOptions options)
    {
        var number = index + 1;
        if (index == stamp.Index || index == stamp.TimeIndex)
            return new(header, FlowKind.Unknown, "", ColumnKind.Stamp, $"column {number} \"{header}\" is read as the time because its fields are times") { Number = number };
        if (stamp.Parts?.Columns.Contains(index) == true)
            return new(header, FlowKind.Unknown, "", ColumnKind.Stamp, $"column {number} \"{header}\" is read as a part of the time because its header says so") { Number = number };
        if (index == stamp.EndIndex)
            return new(header, FlowKind.Unknown, "", ColumnKind.StampEnd, $"column {number} \"{header}\" is read as the end of the interval because its fields are times too") { Number = number };
        var correction = options.Columns.FirstOrDefault(c => c.Corrects(header));
        if (correction is not null)
            return correction with { Header = header, Number = number, Reason = $"column {number} \"{header}\" is read as {HeaderWords.Name(correction.Flow)} in {correction.Unit} because {correction.Reason}" };
        var meaning = unitRow is null && CellUnit.OfColumn(rows, index) is { } unit
            ? HeaderWords.Understand(header, number, unit, options.UnitWhereNone, "its first number")
            : HeaderWords.Understand(header, number, unitRow is not null && index < unitRow.Length ? unitRow[index] : null, options.UnitWhereNone);
        if (meaning.Kind is ColumnKind.Ignored or ColumnKind.QualityWords || HasNumbers(rows, index, numbers)) return meaning;
        // A column may be empty for years before its first number.
        var allBlank = rows.All(r => index >= r.Length || string.IsNullOrWhiteSpace(r[index]));
        return allBlank || meaning.Flow != FlowKind.Unknown
            ? meaning
            : meaning with { Kind = ColumnKind.Ignored, Reason = $"column {number} \"{header}\" is left out because its fields are no numbers" };
    }

    private static bool HasNumbers(IReadOnlyList<string[]> rows, int index, NumberText numbers) =>
        rows.Any(r => index < r.Length && numbers.TryRead(CellUnit.Bare(r[index]), out _));

    private static void RefuseUnknownCorrections(string file, string[] headers, ReadOptions options)
    {
        foreach (var correction in options.Columns)
            if (!Array.Exists(headers, correction.Corrects))
                throw Throw.NoSuchColumn(file, correction.Header, headers);
    }

    /// <summary>The delimiter under which most lines hold a time and something beside it, and the field in which the time stands.</summary>
    internal static CsvTable? Find(IReadOnlyList<string> lines, Func<string, bool> isStamp)
    {
        CsvTable? best = null;
        var bestScore = 0;
        var sample = lines.Take(LinesLookedAt).ToList();
        foreach (var delimiter in Delimiters)
        {
            var split = sample.ConvertAll(l => l.StartsWith('#') ? [] : CsvText.Fields(l, delimiter));
            for (var field = 0; field < Math.Min(split.Max(s => s.Length), 12); field++)
            {
                var index = field;
                var rows = Enumerable.Range(0, split.Count).Where(l => IsRow(split[l], index, isStamp)).ToList();
                if (rows.Count <= bestScore) continue;
                bestScore = rows.Count;
                best = new CsvTable(delimiter, index, rows[0] + 1, rows.ConvertAll(l => split[l])) { Lines = rows.ConvertAll(l => l + 1) };
            }
        }
        return best is null ? null : best with { FirstLine = FirstDataLine(sample, best) };
    }

    /// <summary>The first line of data: a broken row at the top still is a row, not a header, where it holds numbers in place of words.</summary>
    private static int FirstDataLine(List<string> lines, CsvTable table)
    {
        var first = table.FirstLine;
        while (first > 1 && IsBrokenRow(lines[first - 2], table)) first--;
        return first;
    }

    private static bool IsBrokenRow(string line, CsvTable table)
    {
        if (line.StartsWith('#') || !line.Any(char.IsAsciiDigit)) return false;
        var fields = CsvText.Fields(line, table.Delimiter);
        var numbers = fields.Where((f, i) => i != table.StampIndex && LooksLikeNumber(f)).Count();
        return (fields.Length > 1 && numbers * 2 > fields.Length - 1) || line.Count(char.IsLetter) <= 2;
    }

    private static int UsualFields(CsvTable table) => table.Rows.GroupBy(r => r.Length).OrderByDescending(g => g.Count()).First().Key;

    private static bool IsRow(string[] fields, int stamp, Func<string, bool> isStamp)
    {
        if (fields.Length < 2 || stamp >= fields.Length || !isStamp(fields[stamp])) return false;
        for (var i = 0; i < fields.Length; i++)
            if (i != stamp && (string.IsNullOrWhiteSpace(fields[i]) || LooksLikeNumber(fields[i]))) return true;
        return false;
    }

    /// <summary>Whether a line may be a row by itself, whatever the delimiter.</summary>
    internal static bool MayBeRow(string line) =>
        Array.Exists(Delimiters, d => CsvText.Fields(line, d) is var fields && Enumerable.Range(0, Math.Min(fields.Length, 12)).Any(i => IsRow(fields, i, StampSniff.IsStamp)));

    /// <summary>Whether a line may be a row of a table by itself: a time or a number where the time stands, and a number or nothing beside it.</summary>
    internal static bool MayBeRow(string line, char delimiter, int stamp) => IsRow(CsvText.Fields(line, delimiter), stamp, f => StampSniff.IsStamp(f) || LooksLikeNumber(f));

    private static bool LooksLikeNumber(string field) =>
        CellUnit.Bare(field).AsSpan().Trim().IndexOfAnyExcept("0123456789.,'\u2019-\u2212+eE \u00A0\u202F\u2009") < 0 && field.Any(char.IsAsciiDigit);

    /// <summary>The header lines straight above the data: one or several, joined column by column; a line of units apart.</summary>
    private static (string[] Headers, string[]? Units) Headers(IReadOnlyList<string> lines, CsvTable table)
    {
        var fields = UsualFields(table);
        var above = new List<string[]>();
        for (var line = table.FirstLine - 2; line >= 0 && above.Count < 4; line--)
        {
            // Sheets often leave a row empty between the headers and the numbers.
            if (above.Count == 0 && IsEmpty(lines[line], table.Delimiter)) continue;
            if (ReferenceEquals(lines[line], WholeRows.Joined)) continue;
            if (lines[line].StartsWith('#') || string.IsNullOrWhiteSpace(lines[line])) break;
            var split = CsvText.Fields(lines[line], table.Delimiter);
            if (split.Length < 2 || split.Length > fields || split.Length < fields - 1) break;
            // Lines of a name and a value may stand above: once a header names the time, a further one over it names it too, or nothing.
            if (above.Exists(a => SaysTime(a, table.StampIndex)) && !SaysTime(split, table.StampIndex) && !IsBlankAt(split, table.StampIndex)) break;
            above.Insert(0, split);
        }
        if (above.Count == 0) return ([], null);
        string[]? units = null;
        if (above.Count > 1 && above[^1].Any(f => EnergyUnit.Find(Bare(f)) is not null)
            && above[^1].All(f => string.IsNullOrWhiteSpace(f) || EnergyUnit.Find(Bare(f)) is not null || f.Trim().Length <= 20 && f.Trim().StartsWithBracket()))
        {
            units = above[^1];
            above.RemoveAt(above.Count - 1);
        }
        var headers = new string[Math.Max(above.Max(a => a.Length), units?.Length ?? 0)];
        for (var i = 0; i < headers.Length; i++)
        {
            var joined = new StringBuilder();
            foreach (var row in above)
                if (i < row.Length && !string.IsNullOrWhiteSpace(row[i])) joined.Append(joined.Length > 0 ? " " : "").Append(row[i].Trim());
            headers[i] = joined.ToString();
        }
        return (headers, units);
    }

    private static bool SaysTime(string[] fields, int stamp) => stamp < fields.Length && SerialDates.SaysTime(fields[stamp]);

    private static bool IsBlankAt(string[] fields, int index) => index >= fields.Length || string.IsNullOrWhiteSpace(fields[index]);

    private static bool IsEmpty(string line, char delimiter) => line.AsSpan().Trim().Trim(delimiter).Trim().IsEmpty;

    private static string Bare(string field) => field.Trim().Trim('(', ')', '[', ']');

    private static bool StartsWithBracket(this string field) => field.StartsWith('(') || field.StartsWith('[');
}
