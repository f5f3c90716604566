using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What goes out with readings, and what is said once instead of hundreds of times.</summary>
public sealed class NothingLeftOutTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private string Folder => Path.GetDirectoryName(_files.Write("some.txt", "x"))!;

    private static Channel Hours() => new("Import", FlowKind.Import,
        [Instant.FromUtc(2024, 5, 1, 0, 0), Instant.FromUtc(2024, 5, 1, 1, 0)], [Instant.FromUtc(2024, 5, 1, 1, 0), Instant.FromUtc(2024, 5, 1, 2, 0)], [1.0, 2.0], [Quality.Good, Quality.Good]);

    private static readonly Counter Roof = new("roof", MeasurementPoint.Unknown, [new(new LocalDate(2024, 1, 1), 100, Note: "by hand"), new(new LocalDate(2024, 2, 1), 130)]);

    [Fact]
    public void Typed_counters_go_beside_a_table_of_intervals_and_come_back()
    {
        var path = Path.Combine(Folder, "out.csv");
        var written = new Readings([Hours()], [Roof], []).WriteCsv(path);
        Assert.Equal([path, Path.Combine(Folder, "out counters.csv")], written);
        var back = RecordReaders.Read(written[1], new ReadOptions { Zone = DateTimeZone.Utc });
        Assert.Equal(Roof.Readings.Select(r => (r.Date, r.Kwh, r.Note)), Assert.Single(back.Counters).Readings.Select(r => (r.Date, r.Kwh, r.Note)));
    }

    [Fact]
    public void A_table_without_counters_is_one_file()
    {
        var path = Path.Combine(Folder, "out.csv");
        Assert.Equal([path], new Readings([Hours()], [], []).WriteCsv(path));
        Assert.False(File.Exists(Path.Combine(Folder, "out counters.csv")));
    }

    [Fact]
    public void A_day_that_stands_twice_is_one_note_with_its_lines_and_energy()
    {
        var day = string.Concat(Enumerable.Range(0, 24).Select(h => string.Create(CultureInfo.InvariantCulture, $"2024-05-01 {h:00}:00,0.5\n")));
        var file = Assert.Single(Inspection.Of([_files.Write("table.csv", "Time,Import (kWh)\n" + day + day)], "UTC").Files);
        var note = Assert.Single(file.Problems);
        // By hand: rows of lines 2 to 25 stand again in lines 26 to 49, 24 times half a kWh.
        Assert.Equal("24 readings of \"Import\" from 2024-05-01T00:00:00Z to 2024-05-01T23:00:00Z a second time up to line 49, with the same values as from line 2 on", note.Found);
        Assert.Equal((26, 12.0, 24), (note.Line, note.UncountedKwh, file.Channels[0].Repeated));
    }

    [Fact]
    public void Values_below_zero_are_marked_once_in_every_format()
    {
        var meter = Assert.Single(Inspection.Of([_files.Write("meter.csv", "100,NEM12,202405020000,MDP,RETAILER\n200,4001234567,E1Q1,E1,E1,N1,MTR1,kWh,30,\n300,20240501," + string.Join(',', Enumerable.Range(0, 48).Select(i => i is 3 or 5 ? "-0.5" : "1")) + ",A,,,20240502000000,\n900\n")]).Files);
        Assert.Equal((2, 45.0), (meter.Channels[0].Negative, meter.Channels[0].TotalKwh!.Value));
        Assert.Contains("2 values below zero", Assert.Single(meter.Problems).Found);
    }
}
