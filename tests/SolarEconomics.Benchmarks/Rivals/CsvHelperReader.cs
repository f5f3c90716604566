using CsvHelper;

namespace SolarEconomics.Benchmarks;

/// <summary>CsvHelper two ways: typed records, and the raw bytes of its fields with the parsing done by hand.</summary>
internal static class CsvHelperReader
{
    internal const long EpochMinutes = 621_355_968_000_000_000 / TimeSpan.TicksPerMinute;

    internal static LocalColumns ReadRecords(string path)
    {
        var columns = new LocalColumns();
        using var csv = CsvReader.FromFile(path);
        foreach (var row in csv.GetRecords<LocalRow>())
            columns.Add((row.Start.Ticks / TimeSpan.TicksPerMinute) - EpochMinutes, row.ImportKwh, row.ExportKwh, row.GenerationKwh);
        return columns;
    }

    internal static LocalColumns ReadRaw(string path)
    {
        var columns = new LocalColumns();
        using var csv = CsvReader.FromFile(path);
        csv.ReadHeader();
        while (csv.Read())
            columns.Add(Minute(csv.GetSpan(0)), Number(csv.GetSpan(1)), Number(csv.GetSpan(2)), Number(csv.GetSpan(3)));
        return columns;
    }

    /// <summary>yyyy-MM-dd HH:mm, digits in fixed places and unchecked.</summary>
    private static long Minute(ReadOnlySpan<byte> text)
    {
        var date = new DateTime((Two(text, 0) * 100) + Two(text, 2), Two(text, 5), Two(text, 8), 0, 0, 0, DateTimeKind.Unspecified);
        return (date.Ticks / TimeSpan.TicksPerMinute) - EpochMinutes + (Two(text, 11) * 60) + Two(text, 14);
    }

    private static int Two(ReadOnlySpan<byte> text, int at) => ((text[at] - '0') * 10) + text[at + 1] - '0';

    private static double Number(ReadOnlySpan<byte> text)
    {
        var (mantissa, scale, isFraction) = (0L, 1L, false);
        foreach (var c in text)
        {
            if (c == '.')
            {
                isFraction = true;
                continue;
            }
            mantissa = (mantissa * 10) + c - '0';
            if (isFraction) scale *= 10;
        }
        return mantissa / (double)scale;
    }
}
