using System.Globalization;
using nietras.SeparatedValues;

namespace SolarEconomics.Benchmarks;

/// <summary>Sep, each field parsed to its type.</summary>
internal static class SepReader
{
    internal static LocalColumns Read(string path)
    {
        var columns = new LocalColumns();
        using var reader = Sep.Reader().FromFile(path);
        foreach (var row in reader)
        {
            var local = DateTime.ParseExact(row[0].Span, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            columns.Add(local.Ticks / TimeSpan.TicksPerMinute - CsvHelperReader.EpochMinutes, row[1].Parse<double>(), row[2].Parse<double>(), row[3].Parse<double>());
        }
        return columns;
    }
}
