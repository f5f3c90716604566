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
        var rows = new CsvRows(layout, options, problems, ExpectedRows(file));
        using (var stream = file.Open())
        {
            void Tick()
            {
                options.Cancel.ThrowIfCancellationRequested();
                options.Progress?.Report(stream.Position / (double)file.Length);
            }
            Tick();
            if (PlainRows.Suit(layout, options))
            {
                PlainRows.Read(stream, layout, rows, Tick);
            }
            else
            {
                using var reader = new StreamReader(stream, layout.Encoding, detectEncodingFromByteOrderMarks: true, bufferSize: 1 << 16);
                GeneralRows.Read(reader, 0, layout, rows, Tick);
            }
        }
        options.Progress?.Report(1);
        if (rows.Table.Rows == 0)
            throw Throw.NothingToRead(file.Name, "no row that could be counted", "rows with a time and numbers as under its header. See the problems listed", problems.ToList());
        var channels = ChannelsOfTable.Make(rows, layout, options, problems, file.Name);
        return new RecordContent(file.Path, Format, rows.DayClock)
        {
            Channels = channels,
            Problems = problems.ToList(),
            Columns = layout.Columns,
        };
    }

    /// <summary>Rows by the length of those in the head, with a little room: arrays are then seldom grown.</summary>
    private static int ExpectedRows(RecordFile file)
    {
        var lines = file.Head.Count((byte)'\n');
        if (file.Length <= file.Head.Length) return lines + 1;
        var expected = file.Length / (double)file.Head.Length * Math.Max(1, lines) * 1.05;
        return (int)Math.Min(expected, 50_000_000);
    }
}
