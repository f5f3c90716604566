using System.IO.Compression;
using MiniExcelLibs;
using MiniExcelLibs.OpenXml;

namespace SolarEconomics.Files;

/// <summary>Reads workbooks (XLSX): every sheet with a table of readings, its cells understood as those of a table in text form.</summary>
/// <remarks>What a workbook unpacks to is measured before it is read, so that a small file cannot fill memory. Formulas count by the value that was saved with them.</remarks>
internal sealed class XlsxReader : IRecordReader
{
    private const int MostSheets = 64;

    /// <summary>What a sheet can hold, so that a broken row number cannot make billions of empty rows.</summary>
    private const int MostRows = 1_048_576;
    private const long MostCells = 20_000_000;
    private const int CancelEvery = 1024;

    public string Format => "XLSX";

    public bool Recognises(RecordFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Head.StartsWith("PK\u0003\u0004"u8) || file.Head.StartsWith("PK\u0005\u0006"u8);
    }

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(options);
        try
        {
            using (var stream = file.Open()) Unpacking.Check(stream, file.Name, options.Cancel);
            return Sheets.Join(file, Format, ReadSheets(file, options));
        }
        catch (Exception e) when (Throw.IsDamage(e))
        {
            throw Throw.Damaged(file.Name, Format, e);
        }
    }

    private static List<(string Sheet, RecordContent Content)> ReadSheets(RecordFile file, ReadOptions options)
    {
        var contents = new List<(string, RecordContent)>();
        var refusals = new List<RecordException>();
        using var stream = file.Open();
        var names = MiniExcel.GetSheetNames(stream).Take(MostSheets).ToList();
        foreach (var (name, index) in names.Select((n, i) => (n, i)))
        {
            using var text = new TableText();
            WriteSheet(stream, name, text, options.Cancel);
            options.Progress?.Report((index + 0.5) / names.Count);
            if (text.Rows == 0) continue;
            var table = text.AsRecord(file, names.Count == 1 ? file.Name : $"{file.Name} [{name}]");
            if (!Sheets.IsTable(table)) continue;
            try
            {
                contents.Add((name, RecordReaders.Read(table, options with { Progress = null })));
            }
            catch (RecordException refusal)
            {
                // Only where no sheet can be read is the workbook refused, with the first reason; else it is said of the sheet.
                refusals.Add(refusal);
            }
        }
        options.Progress?.Report(1);
        if (contents.Count == 0) throw refusals.Count > 0 ? refusals[0] : Throw.NoTable(file.Name, "a workbook", "sheets " + string.Join(", ", names));
        return refusals.Count == 0 ? contents : [.. contents, .. refusals.Select(r => ("", Sheets.Refused(file, r)))];
    }

    private static void WriteSheet(Stream stream, string sheet, TableText text, CancellationToken cancel)
    {
        stream.Position = 0;
        var cells = 0L;
        var settings = new OpenXmlConfiguration { EnableSharedStringCache = true, FillMergedCells = false };
        foreach (IDictionary<string, object?> row in MiniExcel.Query(stream, useHeaderRow: false, sheetName: sheet, excelType: ExcelType.XLSX, configuration: settings))
        {
            if (text.Rows % CancelEvery == 0) cancel.ThrowIfCancellationRequested();
            cells += row.Count;
            if (text.Rows >= MostRows || cells > MostCells) throw Throw.TooMuch(sheet);
            text.Write(row.Values.Select(CellText.Of));
        }
    }
}
