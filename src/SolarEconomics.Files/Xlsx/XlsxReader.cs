namespace SolarEconomics.Files;

/// <summary>Reads workbooks (XLSX): every sheet with a table of readings, its cells understood as those of a table in text form.</summary>
/// <remarks>What a workbook unpacks to is measured before it is read, so that a small file cannot fill memory. Formulas count by the value that was saved with them.</remarks>
internal sealed class XlsxReader : IRecordReader
{
    private const int MostSheets = 64;

    public string Format => "XLSX";

    public bool Recognises(RecordFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Head.StartsWith("PK\u0003\u0004"u8) || file.Head.StartsWith("PK\u0005\u0006"u8) || file.Head.StartsWith(CompoundFile.Mark);
    }

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(options);
        if (file.Head.StartsWith(CompoundFile.Mark)) throw RefusalOf(file);
        try
        {
            using var stream = file.Open();
            Unpacking.Check(stream, file.Name, options.Cancel);
            stream.Position = 0;
            using var book = new WorkbookArchive(stream, file.Name);
            return ReadSheets(file, book, options);
        }
        catch (Exception e) when (Throw.IsDamage(e))
        {
            throw Throw.Damaged(file.Name, Format, e);
        }
    }

    private static RecordException RefusalOf(RecordFile file)
    {
        using var stream = file.Open();
        var parts = CompoundFile.Parts(stream);
        if (parts.Contains("EncryptedPackage", StringComparer.Ordinal)) return Throw.LockedWorkbook(file.Name);
        return parts.Contains("Workbook", StringComparer.Ordinal) || parts.Contains("Book", StringComparer.Ordinal) ? Throw.OldWorkbook(file.Name) : Throw.OldFile(file.Name);
    }

    private RecordContent ReadSheets(RecordFile file, WorkbookArchive book, ReadOptions options)
    {
        var contents = new List<(string, RecordContent)>();
        var refusals = new List<RecordException>();
        var asides = new List<Problem>();
        var openFormulas = 0;
        for (var index = 0; index < Math.Min(book.Sheets.Count, MostSheets); index++)
        {
            var name = book.Sheets[index].Name;
            var shown = $"{file.Name} [{name}]";
            using var text = new TableText();
            var sheet = new SheetTable(book, book.Sheets[index], shown);
            sheet.Write(text, options.Cancel);
            openFormulas += sheet.OpenFormulas;
            options.Progress?.Report((index + 0.5) / book.Sheets.Count);
            if (text.Rows == 0) continue;
            var table = text.AsRecord(file, shown);
            if (!Sheets.IsTable(table))
            {
                asides.Add(new Problem(shown, 0, 0, "", "a sheet without any row of a time and a number", "a table of readings; it was left out", Severity.Note));
                continue;
            }
            try
            {
                var content = RecordReaders.Read(table, options with { Progress = null });
                contents.Add((name, content with { Problems = [.. sheet.Findings, .. CellProblems.Of(content.Problems)] }));
            }
            catch (RecordException refusal)
            {
                // Only where no sheet can be read is the workbook refused, with the first reason; else it is said of the sheet.
                refusals.Add(CellProblems.Of(refusal));
            }
        }
        options.Progress?.Report(1);
        if (book.Sheets.Count > MostSheets) asides.Add(Throw.SheetsLeftOut(file.Name, book.Sheets.Count, MostSheets));
        if (contents.Count == 0) throw refusals.Count > 0 ? refusals[0] : openFormulas > 0 ? Throw.OnlyFormulas(file.Name, openFormulas) : Throw.NoTable(file.Name, "a workbook", "sheets " + string.Join(", ", book.Sheets.Select(s => s.Name)));
        contents.AddRange(refusals.Select(r => ("", Sheets.Refused(file, r))));
        var joined = Sheets.Join(file, Format, contents);
        return joined with { Problems = [.. joined.Problems, .. asides] };
    }
}
