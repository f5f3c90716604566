using CsvHelper;

namespace SolarEconomics;

/// <summary>Reads the rows of any table by CsvHelper: quotes, lone carriage returns, every encoding.</summary>
internal static class GeneralRows
{
    private const int ProgressEvery = 4096;

    /// <summary>Options for text in which every row is one line (see <see cref="WholeRows"/>): a quotation mark that is never closed cannot swallow the rows below it.</summary>
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
    /// <param name="problems">Where marks that are never closed are listed.</param>
    /// <param name="tick">Called now and then, for progress and to stop.</param>
    internal static void Read(TextReader reader, int lineBefore, CsvLayout layout, IRowTaker rows, ProblemList problems, Action tick)
    {
        // The text is read ahead of the rows; what is found in it waits for its row, so that problems stand in the order of lines.
        var waiting = new Queue<(int Line, int Field, string Raw)>();
        var whole = new WholeRows(new TextLines(reader).Next, [layout.Delimiter], l => CsvSniff.MayBeRow(l, layout.Delimiter, layout.Stamp.Index))
        {
            FirstLine = layout.FirstDataLine - lineBefore,
            NeverClosed = (line, field, raw) => waiting.Enqueue((lineBefore + line, field, raw)),
        };
        using var text = new WholeRowsText(whole);
        using var csv = CsvReader.Create(text, OptionsFor(layout.Delimiter), leaveOpen: true);
        var fields = new string[layout.Fields];
        var count = 0;
        while (csv.Read())
        {
            if (++count % ProgressEvery == 0) tick();
            var line = lineBefore + (int)csv.LineNumber;
            if (line < layout.FirstDataLine) continue;
            Report(waiting, line, problems);
            if (csv.FieldCount > fields.Length) fields = new string[csv.FieldCount];
            for (var i = 0; i < csv.FieldCount; i++) fields[i] = csv.GetString(i);
            rows.Take(fields.AsSpan(0, csv.FieldCount), line);
        }
        Report(waiting, int.MaxValue, problems);
    }

    private static void Report(Queue<(int Line, int Field, string Raw)> waiting, int upTo, ProblemList problems)
    {
        while (waiting.TryPeek(out var mark) && mark.Line <= upTo)
        {
            ReportNeverClosed(problems, mark.Line, mark.Field, mark.Raw);
            waiting.Dequeue();
        }
    }

    internal static void ReportNeverClosed(ProblemList problems, int line, int field, string raw) =>
        problems.Doubtful(line, field, raw, "a quotation mark that opens the field and is never closed", "a second mark at the end of the field; the field was ended with the line, and what stands below was read line by line");
}
