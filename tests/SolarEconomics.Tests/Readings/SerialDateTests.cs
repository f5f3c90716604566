using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Dates that a workbook wrote as bare numbers.</summary>
public sealed class SerialDateTests : IDisposable
{
    private static readonly DateTimeZone Utc = DateTimeZone.Utc;
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private RecordContent Read(string text, SerialDays from = SerialDays.NotToldYet) => RecordReaders.Read(_files.Write("table.csv", text), new ReadOptions { Zone = Utc, SerialDates = from });

    private static string HalfHours(char delimiter = ',') =>
        "date" + delimiter + "import (kWh)\n" + string.Concat(Enumerable.Range(0, 96).Select(i => (45413 + (i / 48.0)).ToString("R", CultureInfo.InvariantCulture).Replace('.', delimiter == ';' ? ',' : '.') + delimiter + (delimiter == ';' ? "0,25\n" : "0.25\n")));

    [Fact]
    public void Bare_numbers_are_not_guessed_and_both_readings_are_shown()
    {
        var refusal = Assert.Throws<RecordException>(() => Read(HalfHours()));
        Assert.Equal("table.csv, line 2, column 1: found \"45413\" where the time stands, a bare number: it is 1 May 2024 00:00 if it counts days as most workbooks do, from 1900, and 2 May 2028 00:00 if it counts from 1904, "
            + "expected dates. Say SerialDates = SerialDays.From1900 (or From1904) in the options, or give the column a date format and save the file again.", refusal.Message);
    }

    [Theory]
    [InlineData(',')]
    [InlineData(';')]
    public void One_line_reads_them_to_the_half_hour(char delimiter)
    {
        var channel = Assert.Single(Read(HalfHours(delimiter), SerialDays.From1900).Channels);
        Assert.Equal((96, Instant.FromUtc(2024, 5, 1, 0, 0), Duration.FromMinutes(30), 24.0), (channel.Count, channel.Start, channel.Step, channel.Total.Kwh));
    }

    [Fact]
    public void Whole_numbers_are_days_and_1904_begins_1462_days_later()
    {
        const string Days = "Datum,Verbrauch (kWh)\n45413,5\n45414,6\n45415,7\n";
        Assert.Equal(Instant.FromUtc(2024, 5, 4, 0, 0), Read(Days, SerialDays.From1900).Channels[0].End);
        Assert.Equal(Instant.FromUtc(2024, 5, 1, 0, 0) + Duration.FromDays(1462), Read(Days, SerialDays.From1904).Channels[0].Start);
    }

    [Fact]
    public void Numbers_under_another_header_are_no_dates() => Assert.Throws<RecordException>(() => Read("counter,import (kWh)\n45413,5\n45414,6\n", SerialDays.From1900));
}
