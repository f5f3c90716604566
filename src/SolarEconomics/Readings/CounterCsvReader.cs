using CsvHelper;

namespace SolarEconomics;

/// <summary>Reads typed or photographed counter readings: one row per device and day. Columns: date, device, kwh; days uncertain, photo and note as wanted.</summary>
internal sealed class CounterCsvReader : IRecordReader
{
    private static readonly string[] Needed = ["date", "device", "kwh"];

    public string Format => "counter CSV";

    public bool Recognises(RecordFile file) => HeaderLine(file) is not null;

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        var header = HeaderLine(file) ?? throw Throw.NothingToRead(file.Name, "no header of a counter file", "date,device,kwh", []);
        if (options.Zone is null) throw Throw.NeedsZone(file.Name, header.Line, Array.IndexOf(header.Fields, "date") + 1, "date");
        var lines = new List<(string[] Fields, int Line)>();
        var problems = new ProblemList(file.Name);
        using (var reader = new StreamReader(file.Open(), CsvText.EncodingOf(file.Head)))
        {
            var date = Array.IndexOf(header.Fields, "date");
            var whole = new WholeRows(new TextLines(reader).Next, [header.Delimiter], l => CsvSniff.MayBeRow(l, header.Delimiter, date)) { NeverClosed = (line, field, raw) => GeneralRows.ReportNeverClosed(problems, line, field, raw) };
            using var text = new WholeRowsText(whole);
            for (var i = 0; i < header.Line; i++) text.ReadLine();
            using var csv = CsvReader.Create(text, GeneralRows.OptionsFor(header.Delimiter), leaveOpen: true);
            while (csv.Read())
            {
                options.Cancel.ThrowIfCancellationRequested();
                var fields = new string[csv.FieldCount];
                for (var i = 0; i < fields.Length; i++) fields[i] = csv.GetString(i);
                lines.Add((fields, header.Line + (int)csv.LineNumber));
            }
        }
        var rows = RowsFor(file, header, lines, options, problems);
        foreach (var (fields, line) in lines) rows.Take(fields, line);
        options.Progress?.Report(1);
        var counters = rows.Counters(options.Plant);
        if (counters.Count == 0)
            throw Throw.NothingToRead(file.Name, "no counter reading that can be counted", "rows such as 2024-03-01,south roof,1234.5. See the problems listed", problems.ToList());
        return new RecordContent(file.Path, Format, options.Zone) { Counters = counters, Problems = problems.ToList() };
    }

    /// <summary>Rows read with the order of dates and the marks of numbers that the file itself shows; refused with both readings where it does not.</summary>
    private static CounterRows RowsFor(RecordFile file, (string[] Fields, char Delimiter, int Line) header, List<(string[] Fields, int Line)> lines, ReadOptions options, ProblemList problems)
    {
        var (date, kwh) = (Array.IndexOf(header.Fields, "date"), Array.IndexOf(header.Fields, "kwh"));
        var whole = lines.Where(row => row.Fields.Length > Math.Max(date, kwh) && !row.Fields[0].StartsWith('#')).ToList();
        if (whole.Count == 0) return new CounterRows(header.Fields, DateOrder.YearMonthDay, NumberText.Plain, problems);
        // Names, photos and notes say nothing of how dates and readings are written.
        var table = new CsvTable(header.Delimiter, date, header.Line + 1, [.. whole.Select(row => row.Fields.Select((field, i) => i == date || i == kwh ? field : "").ToArray())])
        {
            Lines = [.. whole.Select(row => row.Line)],
        };
        var order = StampSniff.Find(file, CsvText.EncodingOf(file.Head), table, header.Fields, options with { SerialDates = SerialDays.NotToldYet }).Order;
        return new CounterRows(header.Fields, order, DecimalMark.Find(file.Name, table, header.Fields.Length), problems);
    }

    private static (string[] Fields, char Delimiter, int Line)? HeaderLine(RecordFile file)
    {
        var lines = CsvText.HeadLines(file, CsvText.EncodingOf(file.Head));
        for (var i = 0; i < Math.Min(lines.Count, 50); i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i]) || lines[i].StartsWith('#')) continue;
            foreach (var delimiter in new[] { ',', ';', '\t' })
            {
                var fields = CsvText.Fields(lines[i], delimiter).Select(f => f.Trim().ToLowerInvariant()).ToArray();
                if (Array.TrueForAll(Needed, fields.Contains)) return (fields, delimiter, i + 1);
            }
            return null;
        }
        return null;
    }
}
