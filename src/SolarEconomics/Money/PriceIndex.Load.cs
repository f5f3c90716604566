using System.Globalization;
using CsvHelper;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

public sealed partial class PriceIndex
{
    private static readonly YearMonthPattern Month = YearMonthPattern.CreateWithInvariantCulture("uuuu-MM");

    /// <summary>Reads an index from a CSV file with the heading <c>month,index</c>.</summary>
    /// <param name="path">Months are written 2024-03, levels with a point. Lines that start with # are remarks.</param>
    /// <exception cref="RecordException">The file is missing or empty, a column is missing, or lines cannot be read: each is listed.</exception>
    public static PriceIndex Load(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path)) throw Throw.IndexMissing(path);
        using var text = new StreamReader(path);
        return Read(text, path);
    }

    /// <summary>Reads an index from an open text.</summary>
    /// <param name="text">CSV text as <see cref="Load"/> reads it.</param>
    /// <param name="name">Name of the text for messages.</param>
    /// <exception cref="RecordException">As for a file.</exception>
    public static PriceIndex Read(TextReader text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        using var csv = CsvReader.Create(text, new CsvReaderOptions { CommentPrefix = '#', TrimWhitespace = true, TrackLineNumbers = true }, leaveOpen: true);
        var levels = new SortedDictionary<YearMonth, double>();
        var lost = new List<Problem>();
        while (csv.Read())
        {
            if (!csv.TryGetFieldIndex("month", out var monthAt) || !csv.TryGetFieldIndex("index", out var levelAt))
            {
                throw Throw.IndexColumns(name, csv.Headers.ToArray());
            }
            var (rawMonth, rawLevel) = (csv.GetString(monthAt), csv.GetString(levelAt));
            var month = Month.Parse(rawMonth);
            var isLevel = double.TryParse(rawLevel, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var level) && level > 0;
            if (!month.Success) lost.Add(Lost(monthAt, rawMonth, "month", "a month written as 2024-03"));
            else if (!isLevel) lost.Add(Lost(levelAt, rawLevel, "index", "a number above 0 with a point, such as 121.4"));
            else if (!levels.TryAdd(month.Value, level)) lost.Add(Lost(monthAt, rawMonth, "month", "each month once"));
        }
        if (lost.Count > 0) throw Throw.UnreadableIndex(lost);
        return levels.Count > 0 ? new PriceIndex(levels) : throw Throw.IndexEmpty(name);

        Problem Lost(int at, string raw, string column, string expected) =>
            new(name, (int)csv.LineNumber, at + 1, raw, $"{column} \"{raw}\"", expected, Severity.Lost);
    }
}
