using NodaTime;

namespace SolarEconomics;

/// <summary>Reads tables in text form: a time and one or several columns of energy, power or counter states.</summary>
internal sealed class IntervalCsvReader : IRecordReader
{
    public string Format => "interval CSV";

    /// <summary>Also takes text files by their name, so that the message can say what the table lacks.</summary>
    public bool Recognises(RecordFile file) =>
        CsvSniff.LooksLikeTable(file) || (Path.GetExtension(file.Path).ToLowerInvariant() is ".csv" or ".tsv" or ".txt" && !file.Head.Contains((byte)0));

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        var layout = CsvSniff.Layout(file, options);
        var problems = new ProblemList(file.Name);
        foreach (var (line, field, raw) in layout.NeverClosed) GeneralRows.ReportNeverClosed(problems, line, field, raw);
        if (layout.Stamp.SaysTwentyFour)
            problems.Note(0, layout.Stamp.Index + 1, "24:00", "the time 24:00 and no 00:00", "times that start their intervals; each is read as the end of its interval. If they are starts, say StampEdge.Start in the options");
        return layout.Long is { } form ? ReadLong(file, layout, form, options, problems) : ReadColumns(file, layout, options, problems);
    }

    private RecordContent ReadColumns(RecordFile file, CsvLayout layout, ReadOptions options, ProblemList problems)
    {
        var rows = new CsvRows(layout, options, problems, ExpectedRows(file));
        if (PlainRows.Suit(layout, options))
        {
            using var stream = file.Open();
            PlainRows.Read(stream, layout, rows, problems, TickOf(stream, file, options));
        }
        else
        {
            ReadGenerally(file, layout, rows, options, problems);
        }
        options.Progress?.Report(1);
        if (rows.Table.Rows == 0) throw NoRows(file, problems);
        var channels = ChannelsOfTable.Make(rows, layout, options, problems, file.Name);
        if (channels.Count == 0) throw NoColumns(file, rows.Columns, problems);
        return new RecordContent(file.Path, Format, rows.DayClock) { Channels = channels, Problems = problems.ToList(), Columns = rows.Columns };
    }

    private RecordContent ReadLong(RecordFile file, CsvLayout layout, LongForm form, ReadOptions options, ProblemList problems)
    {
        var rows = new LongRows(layout, form, options, problems);
        ReadGenerally(file, layout, rows, options, problems);
        options.Progress?.Report(1);
        if (rows.Channels.Count == 0) throw NoRows(file, problems);
        var channels = rows.Channels.SelectMany(c => ChannelsOfTable.Make(c, layout, options, problems, file.Name)).ToList();
        if (channels.Count == 0) throw NoColumns(file, layout.Columns, problems);
        return new RecordContent(file.Path, Format, rows.Channels[0].DayClock)
        {
            Channels = channels,
            Problems = problems.ToList(),
            Columns = [.. layout.Columns.Where(c => c.Kind is ColumnKind.Stamp or ColumnKind.StampEnd or ColumnKind.Ignored), .. rows.Channels.SelectMany(c => c.Values.Select(v => v.Meaning))],
        };
    }

    private static void ReadGenerally(RecordFile file, CsvLayout layout, IRowTaker rows, ReadOptions options, ProblemList problems)
    {
        using var stream = file.Open();
        using var reader = new StreamReader(stream, layout.Encoding, detectEncodingFromByteOrderMarks: true, bufferSize: 1 << 16);
        GeneralRows.Read(reader, 0, layout, rows, problems, TickOf(stream, file, options));
    }

    private static Action TickOf(Stream stream, RecordFile file, ReadOptions options)
    {
        options.Cancel.ThrowIfCancellationRequested();
        return () =>
        {
            options.Cancel.ThrowIfCancellationRequested();
            options.Progress?.Report(stream.Position / (double)file.Length);
        };
    }

    private static RecordException NoRows(RecordFile file, ProblemList problems) =>
        Throw.NothingToRead(file.Name, "no row that could be counted", "rows with a time and numbers as under its header. See the problems listed", problems.ToList());

    private static RecordException NoColumns(RecordFile file, IReadOnlyList<ColumnMeaning> columns, ProblemList problems) =>
        Throw.NothingToRead(file.Name, "no column of energy, power or counter states (" + string.Join("; ", columns.Where(c => c.Kind == ColumnKind.Ignored).Select(c => c.Reason)) + ")",
            "one at least, with its unit in the header. Say ColumnMeaning.Of in the options where a column is misunderstood", problems.ToList());

    /// <summary>Rows by the length of those in the head, with a little room: arrays are then seldom grown.</summary>
    private static int ExpectedRows(RecordFile file)
    {
        var lines = file.Head.Count((byte)'\n');
        if (file.Length <= file.Head.Length) return lines + 1;
        var expected = file.Length / (double)file.Head.Length * Math.Max(1, lines) * 1.05;
        return (int)Math.Min(expected, 50_000_000);
    }
}
