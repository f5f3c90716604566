namespace SolarEconomics.Files;

/// <summary>Adds XLSX and Parquet to the readers of records. The workbench and its notebooks do so at their start; a program calls <see cref="Register"/> once.</summary>
/// <remarks>Safe to call from several threads and more than once.</remarks>
public static class FileFormats
{
    /// <summary>Registers both readers: <see cref="Readings.Load(string, Site, ReadOptions?)"/> and <see cref="Inspection"/> then read such files as any other.</summary>
    public static void Register()
    {
        RecordReaders.Register(new XlsxReader());
        RecordReaders.Register(new ParquetReader());
    }
}
