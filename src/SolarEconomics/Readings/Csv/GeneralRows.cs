using CsvHelper;

namespace SolarEconomics;

/// <summary>Reads the rows of any table by CsvHelper: quotes, lone carriage returns, every encoding.</summary>
internal static class GeneralRows
{
    private const int ProgressEvery = 4096;

    /// <summary>Options under which a quotation mark that is never closed cannot swallow the rows below it.</summary>
    internal static CsvReaderOptions OptionsFor(char delimiter) => new()
    {
        Separator = delimiter,
        HasHeader = false,
        AllowLineBreaksInQuotes = false,
        SkipEmptyLines = true,
        TrackLineNumbers = true,
        DetectSeparatorHint = false,
        MaxRecordSize = 64 << 20,
    };

    /// <summary>Hands every row from a line on to the taker.</summary>
    /// <param name="reader">Text from the start of a line.</param>
    /// <param name="lineBefore">Number of lines of the file before that text.</param>
    /// <param name="layout">Layout of the table; lines before its first row of data are left out.</param>
    /// <param name="rows">Who takes the rows.</param>
    /// <param name="tick">Called now and then, for progress and to stop.</param>
    internal static void Read(TextReader reader, int lineBefore, CsvLayout layout, IRowTaker rows, Action tick)
    {
        using var csv = CsvReader.Create(reader, OptionsFor(layout.Delimiter), leaveOpen: true);
        var fields = new string[layout.Fields];
        var count = 0;
        while (csv.Read())
        {
            if (++count % ProgressEvery == 0) tick();
            var line = lineBefore + (int)csv.LineNumber;
            if (line < layout.FirstDataLine) continue;
            if (csv.FieldCount > fields.Length) fields = new string[csv.FieldCount];
            for (var i = 0; i < csv.FieldCount; i++) fields[i] = csv.GetString(i);
            rows.Take(fields.AsSpan(0, csv.FieldCount), line);
        }
    }
}
