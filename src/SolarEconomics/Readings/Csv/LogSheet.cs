using CsvHelper;

namespace SolarEconomics;

/// <summary>Reads a log that somebody keeps by hand: one heading line, a dated row each time. One bad field refuses the file, with every problem listed.</summary>
/// <param name="what">What the file is, for messages: <c>generator log</c>.</param>
/// <param name="needed">Columns that must be there.</param>
/// <param name="optional">Columns that may be.</param>
internal sealed class LogSheet(string what, string[] needed, string[] optional)
{
    private readonly List<Problem> _lost = [];

    /// <summary>Reads a file row by row.</summary>
    /// <exception cref="RecordException">The file is missing, cannot be opened, is empty, lacks a column, or has fields that cannot be read.</exception>
    internal IReadOnlyList<T> Load<T>(string path, Func<LogRow, T> read)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path)) throw Throw.LogMissing(path, what);
        StreamReader text;
        try
        {
            text = new StreamReader(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw Throw.LogClosed(path, what, error);
        }
        using (text) return Read(text, path, read);
    }

    /// <summary>Reads an open text row by row.</summary>
    /// <exception cref="RecordException">As for a file.</exception>
    internal IReadOnlyList<T> Read<T>(TextReader text, string name, Func<LogRow, T> read)
    {
        var options = new CsvReaderOptions { CommentPrefix = '#', TrimWhitespace = true, TrackLineNumbers = true, MalformedData = CsvMalformedDataHandling.Throw };
        using var csv = CsvReader.Create(text, options, leaveOpen: true);
        var rows = new List<T>();
        try
        {
            if (!csv.Read()) throw Throw.LogEmpty(name, what, needed);
            var header = csv.Headers.Select(h => h.Trim()).ToArray();
            var missing = needed.Where(n => !header.Contains(n, StringComparer.OrdinalIgnoreCase)).ToArray();
            if (missing.Length > 0) throw Throw.LogColumns(name, missing, header, needed, optional);
            do rows.Add(read(new LogRow(csv, name, header, _lost)));
            while (csv.Read());
        }
        catch (CsvFormatException error)
        {
            throw Throw.LogQuotes(name, error.LineNumber, error);
        }
        return _lost.Count == 0 ? rows : throw Throw.UnreadableLog(what, _lost);
    }
}
