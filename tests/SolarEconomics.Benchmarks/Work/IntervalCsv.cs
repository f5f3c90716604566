using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>Reading an interval table into series with instants, every check and the list of gaps.</summary>
internal static class IntervalCsv
{
    internal static Comparison Warm(MadeTable table) => new(
        $"interval CSV of {Words.Count(table.Rows)} rows, warm", "row", table.Rows,
        new InProcess<Readings>("ours", () => Read(table.Path), ChecksumOfReadings),
        [
            table.Rows > 500_000
                ? new Rival(new PythonPeer("pandas read_csv with dates", "interval_csv.py", table.Path, "dates"), 20)
                : new Rival(new PythonPeer("pandas read_csv, time format stated", "interval_csv.py", table.Path, "format"), 15),
            new Rival(new InProcess<LocalColumns>("Sep, typed", () => SepReader.Read(table.Path), ChecksumOfColumns), 3),
            new Rival(new InProcess<LocalColumns>("CsvHelper GetRecords", () => CsvHelperReader.ReadRecords(table.Path), ChecksumOfColumns), 3),
            new Rival(new InProcess<LocalColumns>("CsvHelper's raw field loop, fields parsed by hand", () => CsvHelperReader.ReadRaw(table.Path), ChecksumOfColumns), 1 / 1.3),
        ])
    {
        Bytes = table.Bytes, HoursOfData = table.HoursOfData,
    };

    internal static Comparison Cold(MadeTable table) => new(
        $"interval CSV of {Words.Count(table.Rows)} rows, fresh process", "row", table.Rows,
        ColdProcess.Ours("ours", "cold-read", table.Path),
        [new Rival(ColdProcess.OfPython("Python with pandas, fresh process", "interval_csv_cold.py", table.Path), table.Rows > 500_000 ? 6 : 5)])
    {
        Runs = 7, Bytes = table.Bytes, HoursOfData = table.HoursOfData,
    };

    /// <summary>Reads and asks for the quality, so that gaps and totals are worked out too.</summary>
    internal static Readings Read(string path)
    {
        var readings = Readings.Load(path, MadeTable.Site);
        return readings.Quality.Channels.Count == 3 ? readings : throw new InvalidOperationException($"{path} gave {readings.Quality.Channels.Count} channels.");
    }

    private static double[] ChecksumOfReadings(Readings readings)
    {
        var localMinutes = 0L;
        foreach (var start in readings.Channels[0].Starts) localMinutes += (start + MadeTable.Site.Zone.GetUtcOffset(start).ToTimeSpan().ToDuration()).ToUnixTimeSeconds() / 60;
        return [readings.Channels[0].Count, localMinutes, .. readings.Channels.Select(c => c.Total.Kwh)];
    }

    private static double[] ChecksumOfColumns(LocalColumns columns) =>
        [columns.LocalMinutes.Count, columns.LocalMinutes.Sum(), columns.ImportKwh.Sum(), columns.ExportKwh.Sum(), columns.GenerationKwh.Sum()];

    private static Duration ToDuration(this TimeSpan span) => Duration.FromTimeSpan(span);
}
