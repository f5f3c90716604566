using Parquet;
using Parquet.Schema;

namespace SolarEconomics.Files.Tests;

/// <summary>Writes Parquet tables whose cells are missing, no numbers, too large, negative, repeated or out of order.</summary>
internal static class ParquetFaults
{
    private const int Rows = 96;

    /// <returns>Sum of all numbers that a reading can be. Unit: kWh.</returns>
    internal static double Write(string path, int seed)
    {
        var random = new Random(seed);
        var times = Enumerable.Range(0, Rows).Select(i => (DateTime?)new DateTime(2024, 6, 1, 0, 0, 0, DateTimeKind.Utc).AddMinutes(30 * i)).ToArray();
        var kwh = Enumerable.Range(0, Rows).Select(i => (double?)(i % 7 * 0.125)).ToArray();
        for (var faults = random.Next(1, 9); faults > 0; faults--)
        {
            var row = random.Next(Rows);
            switch (random.Next(7))
            {
                case 0: kwh[row] = null; break;
                case 1: kwh[row] = double.NaN; break;
                case 2: kwh[row] = 1e300; break;
                case 3: kwh[row] = -2.5; break;
                case 4: times[row] = null; break;
                case 5: times[row] = times[Math.Max(0, row - 1)]; break;
                default: (times[row], times[0]) = (times[0], times[row]); break;
            }
        }
        WriteAsync(path, times, kwh).GetAwaiter().GetResult();
        return kwh.OfType<double>().Where(k => Math.Abs(k) < 1e14).Sum();
    }

    private static async Task WriteAsync(string path, DateTime?[] times, double?[] kwh)
    {
        var (time, energy) = (new DateTimeDataField("time", DateTimeFormat.Timestamp, isAdjustedToUTC: true, DateTimeTimeUnit.Micros, isNullable: true), new DataField<double?>("import (kWh)"));
        await using var stream = File.Create(path);
        await using var writer = await ParquetWriter.CreateAsync(new ParquetSchema(time, energy), stream);
        using var group = writer.CreateRowGroup();
        await group.WriteAsync<DateTime>(time, times);
        await group.WriteAsync<double>(energy, kwh);
    }
}
