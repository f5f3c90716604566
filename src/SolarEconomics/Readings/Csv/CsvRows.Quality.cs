namespace SolarEconomics;

internal sealed partial class CsvRows
{
    /// <summary>The columns of quality words, each with the value column that it speaks of.</summary>
    private (int Index, int Column)[] QualityColumns(IReadOnlyList<ColumnMeaning> columns)
    {
        var found = new List<(int, int)>();
        for (var i = 0; i < columns.Count; i++)
        {
            if (columns[i].Kind != ColumnKind.QualityWords) continue;
            var of = columns[i].Header.Trim()[QualityWords.HeaderBegin.Length..].Trim();
            var column = Array.FindIndex(_values, v => string.Equals(v.Meaning.Header.Trim(), of, StringComparison.OrdinalIgnoreCase));
            if (column >= 0) found.Add((i, column));
        }
        return [.. found];
    }

    private void TakeQuality(ReadOnlySpan<string> fields, int index, int column, int row, int line)
    {
        if (index >= fields.Length || string.IsNullOrWhiteSpace(fields[index])) return;
        if (!QualityWords.TryRead(fields[index], out var quality))
            _problems.Doubtful(line, index + 1, fields[index], $"\"{ProblemList.Shorten(fields[index])}\" as quality", "words such as estimated, filled or doubtful; the value is counted as it stands");
        else if (!Table.Quality(column)[row].HasFlag(Quality.Missing))
            Table.Flag(row, column, quality);
    }
}
