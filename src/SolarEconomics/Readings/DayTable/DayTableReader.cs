namespace SolarEconomics;

/// <summary>Reads tables with a day in each row and its intervals in columns, headed with times of the day or with numbers.</summary>
internal sealed class DayTableReader : IRecordReader
{
    public string Format => "table of days";

    public bool Recognises(RecordFile file) => DayTableHead.Find(file) is not null;

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        var head = DayTableHead.Find(file) ?? throw Throw.NothingToRead(file.Name, "no line with the times of a day as headers", "date,00:00,00:30,… in one line", []);
        if (options.Zone is not { } zone) throw Throw.NeedsZone(file.Name, head.Table.FirstLine, head.Table.StampIndex + 1, head.Table.Rows[0][head.Table.StampIndex]);
        var stamp = StampSniff.Find(file, head.Encoding, head.Table, head.Headers, options);
        var layout = new CsvLayout
        {
            Encoding = head.Encoding,
            Delimiter = head.Table.Delimiter,
            Numbers = DecimalMark.Find(file.Name, head.Table, head.Headers.Length),
            FirstDataLine = head.Table.FirstLine,
            Columns = [.. head.Headers.Select((h, i) => new ColumnMeaning(h, FlowKind.Unknown, "", ColumnKind.Ignored, "") { Number = i + 1 })],
            Stamp = stamp,
        };
        var problems = new ProblemList(file.Name);
        foreach (var (line, field, raw) in head.NeverClosed) GeneralRows.ReportNeverClosed(problems, line, field, raw);
        var rows = new DayTableRows(head, layout, zone, options, problems);
        using (var stream = file.Open())
        using (var text = new StreamReader(stream, layout.Encoding, detectEncodingFromByteOrderMarks: true, bufferSize: 1 << 16))
            GeneralRows.Read(text, 0, layout, rows, problems, () =>
            {
                options.Cancel.ThrowIfCancellationRequested();
                options.Progress?.Report(stream.Position / (double)file.Length);
            });
        options.Progress?.Report(1);
        var channels = rows.Channels.Where(c => c.Rows > 0).ToList();
        if (rows.Unused is { } correction) throw Throw.NoSuchColumn(file.Name, correction.Header, [.. channels.Select(c => c.Name)]);
        if (channels.Count == 0)
            throw Throw.NothingToRead(file.Name, "no day that could be counted", "rows with a date and numbers as under its header. See the problems listed", problems.ToList());
        return new RecordContent(file.Path, Format, zone)
        {
            Channels = [.. channels.SelectMany(c => c.ToChannels(file.Name))],
            Problems = problems.ToList(),
            Columns = [.. channels.Select(c => c.Meaning)],
        };
    }
}
