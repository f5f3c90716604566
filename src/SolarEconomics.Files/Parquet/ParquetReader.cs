namespace SolarEconomics.Files;

/// <summary>Reads flat Parquet tables: a column of times and columns of numbers, understood by their names as those of a table in text form.</summary>
/// <remarks>A timestamp that the file marks as UTC is an instant; one that it does not is a local time and needs a clock.</remarks>
internal sealed class ParquetReader : IRecordReader
{
    private const int ShortestFile = 12;

    public string Format => "Parquet";

    public bool Recognises(RecordFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Head.StartsWith("PAR1"u8);
    }

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(options);
        try
        {
            if (file.Length < ShortestFile) throw new InvalidDataException("it is too short");
            using var text = new TableText();
            var findings = new ParquetFindings(file.Name);
            ParquetColumns.WriteAsync(file, text, findings, options).GetAwaiter().GetResult();
            var table = text.AsRecord(file, file.Name);
            if (!Sheets.IsTable(table)) throw Throw.NoTable(file.Name, "a Parquet file", "columns");
            var content = RecordReaders.Read(table, options with { Progress = null });
            return Sheets.Join(file, Format, [("", content with { Problems = [.. findings.All, .. content.Problems] })]);
        }
        catch (Exception e) when (Throw.IsDamage(e))
        {
            throw Throw.Damaged(file.Name, Format, e);
        }
    }
}
