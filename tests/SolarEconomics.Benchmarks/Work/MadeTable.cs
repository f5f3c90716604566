using System.Globalization;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>An interval table of five-minute readings of an invented home, in three columns, on the clock of Europe/Dublin: the repeated hour stands twice.</summary>
/// <param name="Path">The file.</param>
/// <param name="Rows">Rows under the header.</param>
/// <param name="Stamps">The times, as text, in order.</param>
internal sealed record MadeTable(string Path, int Rows, string[] Stamps)
{
    internal const string ZoneId = "Europe/Dublin";
    internal static readonly Site Site = Site.At("Made home", latitude: 53.2, longitude: -9.1, zone: ZoneId, currency: "EUR");

    internal double HoursOfData => Rows / 12.0;

    internal long Bytes => new FileInfo(Path).Length;

    internal static MadeTable Of(int rows)
    {
        var path = Places.Made(string.Create(CultureInfo.InvariantCulture, $"interval-{rows}.csv"));
        var random = new Random(20_260_301);
        var stamps = new string[rows];
        using var file = new StreamWriter(path) { NewLine = "\n" };
        file.WriteLine("start,import (kWh),export (kWh),generation (kWh)");
        var at = Instant.FromUtc(2015, 3, 1, 0, 0);
        for (var row = 0; row < rows; row++, at += Duration.FromMinutes(5))
        {
            // Every June the logger was off for two hours: a record without a hole is not what people have.
            var local = at.InZone(Site.Zone).LocalDateTime;
            if (local is { Month: 6, Day: 11, Hour: 10, Minute: 0 }) local = (at += Duration.FromHours(2)).InZone(Site.Zone).LocalDateTime;
            stamps[row] = local.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
            var sun = Math.Max(0, Math.Sin((local.Hour + (local.Minute / 60.0) - 6) / 12 * Math.PI)) * 0.3 * random.NextDouble();
            var use = 0.01 + (0.08 * random.NextDouble());
            file.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{stamps[row]},{Math.Max(0, use - sun):0.000},{Math.Max(0, sun - use):0.000},{sun:0.000}"));
        }
        return new MadeTable(path, rows, stamps);
    }
}
