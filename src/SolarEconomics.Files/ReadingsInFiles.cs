using MiniExcelLibs;
using MiniExcelLibs.OpenXml;
using NodaTime.Text;

namespace SolarEconomics.Files;

/// <summary>Writes readings as XLSX and Parquet.</summary>
public static class ReadingsInFiles
{
    /// <summary>Writes the interval channels as one Parquet table: start and end in UTC, one column per channel in kWh, missing values null; words of quality beside those that have any.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="path">File to write; it is replaced whole, or not at all.</param>
    /// <param name="cancel">Stops the writing; the file is then as it was.</param>
    /// <returns>The files written: the table, and, where there are typed counters, <c>NAME counters.csv</c> in the same folder as <see cref="Readings.WriteCountersCsv"/> writes it.</returns>
    /// <exception cref="InvalidOperationException">There is no channel, or channels overlap with different intervals.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static IReadOnlyList<string> WriteParquet(this Readings readings, string path, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(path);
        ReplacedFile.Write(path, beside => ParquetTable.Write(new ChannelTable(readings), beside, cancel));
        return [path, .. readings.WriteCountersBeside(path)];
    }

    /// <summary>Writes the interval channels as one sheet: start and end in UTC as ISO text, so that no clock change is lost, one column per channel in kWh, missing values empty.</summary>
    /// <param name="readings">The readings. Shape: at most 1,048,575 intervals, as a sheet holds no more rows.</param>
    /// <param name="path">File to write; it is replaced whole, or not at all.</param>
    /// <param name="cancel">Stops the writing; the file is then as it was.</param>
    /// <returns>The files written: the table, and, where there are typed counters, <c>NAME counters.csv</c> in the same folder as <see cref="Readings.WriteCountersCsv"/> writes it.</returns>
    /// <exception cref="InvalidOperationException">There is no channel, there are too many rows, or channels overlap with different intervals.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static IReadOnlyList<string> WriteXlsx(this Readings readings, string path, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(path);
        var settings = new OpenXmlConfiguration { TableStyles = TableStyles.None, AutoFilter = false };
        ReplacedFile.Write(path, beside => MiniExcel.SaveAs(beside, Rows(new ChannelTable(readings), cancel), printHeader: true, sheetName: "readings", excelType: ExcelType.XLSX, configuration: settings, overwriteFile: true));
        return [path, .. readings.WriteCountersBeside(path)];
    }

    private static IEnumerable<Dictionary<string, object?>> Rows(ChannelTable table, CancellationToken cancel)
    {
        for (var rows = 1; table.Next(); rows++)
        {
            cancel.ThrowIfCancellationRequested();
            if (rows > MostRows) throw Throw.TooLongForSheet(MostRows);
            var row = new Dictionary<string, object?>(StringComparer.Ordinal) { ["start"] = InstantPattern.ExtendedIso.Format(table.Start), ["end"] = InstantPattern.ExtendedIso.Format(table.End) };
            for (var c = 0; c < table.Headers.Count; c++)
            {
                row[table.Headers[c]] = table.Kwh[c];
                if (table.HasQuality[c]) row[ChannelTable.QualityHeader(table.Headers[c])] = QualityWords.Of(table.Quality[c]);
            }
            yield return row;
        }
    }

    private const int MostRows = 1_048_575;
}
