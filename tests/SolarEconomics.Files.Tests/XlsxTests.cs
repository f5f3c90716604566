using System.IO.Compression;
using NodaTime;

namespace SolarEconomics.Files.Tests;

public sealed class XlsxTests : IDisposable
{
    private static readonly Site Berlin = Site.At("Test", 52, 13, "Europe/Berlin", "EUR");
    private readonly Places _places = new();

    public void Dispose() => _places.Dispose();

    private static object?[][] HalfHours(int count, Func<DateTime, object?[]> stamp) =>
        [.. Enumerable.Range(0, count).Select(i => (object?[])[.. stamp(new DateTime(2024, 5, 1).AddMinutes(30 * i)), 0.25, i % 4 * 10])];

    private Readings Read(params (string, object?[][])[] sheets) => Readings.Load(_places.Write("book.xlsx", Workbook.Of("", sheets)), Berlin);

    [Fact]
    public void A_sheet_with_a_title_units_and_a_row_of_totals_reads_like_a_table()
    {
        var readings = Read(("May", [["Report of my meter"], [], ["Time", "Import", "Export"], [null, "(kWh)", "(Wh)"], .. HalfHours(96, t => [t]), ["Total", 24, 1_440]]));
        Assert.Equal([(FlowKind.Import, 24.0, 96), (FlowKind.Export, 1.44, 96)], readings.Channels.Select(c => (c.Flow, Math.Round(c.Total.Kwh, 9), c.Count)));
        Assert.Equal(Instant.FromUtc(2024, 4, 30, 22, 0), readings.Channels[0].Start);
        Assert.Equal((101, Severity.Note), (Assert.Single(readings.Problems).Line, readings.Problems[0].Severity));
    }

    [Fact]
    public void Date_and_time_of_day_may_stand_in_two_columns()
    {
        var readings = Read(("May", [["Date", "Time", "Use (kWh)", "Import (Wh)"], .. HalfHours(96, t => [DateOnly.FromDateTime(t), TimeOnly.FromDateTime(t)])]));
        Assert.Equal(Duration.FromMinutes(30), readings.Channels[0].Step);
        Assert.Equal(24, readings.Channels[0].Total.Kwh, 9);
    }

    [Fact]
    public void Numbers_without_a_date_format_are_refused_with_both_readings_and_one_line_reads_them()
    {
        var path = _places.Write("bare.xlsx", Workbook.Of("", ("May", [["date", "import (kWh)"], .. Enumerable.Range(0, 96).Select(i => (object?[])[45413 + (i / 48.0), 0.25])])));
        Assert.Contains("it is 1 May 2024 00:00 if it counts days as most workbooks do, from 1900", Assert.Throws<RecordException>(() => Readings.Load(path, Berlin)).Message, StringComparison.Ordinal);
        var channel = Assert.Single(Readings.Load(path, Berlin, new ReadOptions { SerialDates = SerialDays.From1900 }).Channels);
        Assert.Equal((Instant.FromUtc(2024, 4, 30, 22, 0), Duration.FromMinutes(30), 24.0), (channel.Start, channel.Step, channel.Total.Kwh));
    }

    [Fact]
    public void A_time_between_two_seconds_keeps_its_milliseconds()
    {
        var start = new DateTime(2024, 5, 1, 12, 0, 0, 250);
        var channel = Assert.Single(Read(("May", [["Time", "Import (kWh)"], [start, 1], [start.AddHours(1), 2]])).Channels);
        Assert.Equal(Instant.FromUtc(2024, 5, 1, 10, 0) + Duration.FromMilliseconds(250), channel.Start);
    }

    [Fact]
    public void Every_sheet_with_a_table_is_read_and_its_channels_carry_its_name()
    {
        object?[][] days = [["Date", "Generation (kWh)"], .. Enumerable.Range(0, 31).Select(i => (object?[])[new DateOnly(2024, 3, 15).AddDays(i), 5 + (i % 3)])];
        var readings = Read(("Notes", [["for the tax office"]]), ("May", [["Time", "Import (kWh)", "Export (Wh)"], .. HalfHours(48, t => [t])]), ("Days", days));
        Assert.Equal(["May: Import", "May: Export", "Days: Generation"], readings.Channels.Select(c => c.Name));
        // The day of the clock change has 23 hours.
        Assert.Contains(Enumerable.Range(0, 31), i => readings.Channels[2].Ends[i] - readings.Channels[2].Starts[i] == Duration.FromHours(23));
    }

    [Theory]
    [InlineData("empty", "zip archive with nothing in it")]
    [InlineData("other", "zip archive of other files")]
    [InlineData("xlsb", "found a binary workbook (.xlsb), expected XLSX. Open it and save it as XLSX or CSV")]
    [InlineData("ods", "found an OpenDocument file (.ods), expected XLSX. Open it and save it as XLSX or CSV")]
    [InlineData("bomb", "unpacks to far more")]
    [InlineData("entities", "damaged XLSX")]
    [InlineData("cut", "damaged XLSX")]
    [InlineData("notes", "without any row of a time and a number (looked in sheets Notes)")]
    public void What_is_no_workbook_of_readings_is_refused_in_words(string kind, string words)
    {
        var book = Workbook.Of("", ("May", [["Time", "Import (kWh)", "Export (Wh)"], .. HalfHours(48, t => [t])]));
        var bytes = kind switch
        {
            "empty" => Zip(_ => { }),
            "other" => Zip(zip => zip.CreateEntry("notes.txt").Open().Dispose()),
            "xlsb" => Zip(zip => zip.CreateEntry("xl/workbook.bin").Open().Dispose()),
            "ods" => Zip(zip =>
            {
                foreach (var part in new[] { "mimetype", "content.xml" }) zip.CreateEntry(part).Open().Dispose();
            }),
            "bomb" => Zip(zip => Zeros(zip.CreateEntry("xl/worksheets/sheet1.xml"), 200 << 20)),
            "entities" => Workbook.Of("<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]>", ("May", [["Time", "Import (kWh)"]])),
            "cut" => book[..(book.Length / 2)],
            _ => Workbook.Of("", ("Notes", [["for the tax office"]])),
        };
        Assert.Contains(words, Assert.Throws<RecordException>(() => Readings.Load(_places.Write("book.xlsx", bytes), Berlin)).Message);
    }

    private static byte[] Zip(Action<ZipArchive> fill)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true)) fill(zip);
        return bytes.ToArray();
    }

    private static void Zeros(ZipArchiveEntry entry, int count)
    {
        using var stream = entry.Open();
        var block = new byte[1 << 20];
        for (var written = 0; written < count; written += block.Length) stream.Write(block);
    }
}
