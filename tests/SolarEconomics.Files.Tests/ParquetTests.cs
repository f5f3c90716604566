using DuckDB.NET.Data;
using NodaTime;
using Parquet;
using Parquet.Schema;

namespace SolarEconomics.Files.Tests;

/// <summary>Parquet against a database engine that reads and writes it by code of its own (DuckDB).</summary>
public sealed class ParquetTests : IDisposable
{
    private static readonly Site Dublin = Site.At("Test", 53, -9, "Europe/Dublin", "EUR");
    private readonly Places _places = new();

    public void Dispose() => _places.Dispose();

    private static object Ask(string sql)
    {
        using var connection = new DuckDBConnection("DataSource=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SET TimeZone = 'UTC'; " + sql;
        return command.ExecuteScalar() ?? "";
    }

    [Fact]
    public void The_engine_reads_the_totals_that_the_sample_states()
    {
        var path = _places.At("month.parquet");
        Readings.Load(Places.Sample("nem12-5min-solar-month.csv"), Dublin).WriteParquet(path);
        // The sample's README: E1 270.738 kWh, B1 589.172 kWh, 8928 readings from 2023-03-01 00:00 +10:00 on.
        Assert.Equal("270.738 589.172 8928 2023-02-28 14:00:00 2023-03-31 14:00:00", Ask(
            $"""SELECT concat_ws(' ', round(sum("import E1 (kWh)"), 6), round(sum("export B1 (kWh)"), 6), count(*), strftime(min("start"), '%Y-%m-%d %H:%M:%S'), strftime(max("end"), '%Y-%m-%d %H:%M:%S')) FROM '{path}'"""));
    }

    [Theory]
    [InlineData("UTINYINT")]
    [InlineData("TINYINT")]
    [InlineData("USMALLINT")]
    [InlineData("UINTEGER")]
    [InlineData("UBIGINT")]
    public void Whole_numbers_of_every_size_are_read(string type)
    {
        var path = _places.At("sizes.parquet");
        Ask($"""COPY (SELECT TIMESTAMPTZ '2024-06-01 00:00:00+00' + INTERVAL (i * 30) MINUTE AS "time", (i % 4 * 25)::{type} AS "export (Wh)" FROM range(200) t(i)) TO '{path}' (FORMAT parquet); SELECT 1""");
        Assert.Equal(50 * 0.15, Assert.Single(Readings.Load(path, Dublin).Channels).Total.Kwh, 9);
    }

    [Theory]
    [InlineData("TIMESTAMP_MS '2024-06-01 00:00:00.250'")]
    [InlineData("TIMESTAMP_NS '2024-06-01 00:00:00.250'")]
    [InlineData("TIMESTAMP '2024-06-01 00:00:00.250'")]
    public void Times_of_every_unit_are_exact_to_the_millisecond(string time)
    {
        var path = _places.At("times.parquet");
        Ask($"""COPY (SELECT {time} AS "time", 1.5::DOUBLE AS "import (kWh)" UNION ALL SELECT {time} + INTERVAL 1 HOUR, 2.5 ORDER BY 1) TO '{path}' (FORMAT parquet); SELECT 1""");
        Assert.Equal(Instant.FromUtc(2024, 5, 31, 23, 0) + Duration.FromMilliseconds(250), Assert.Single(Readings.Load(path, Dublin).Channels).Start);
    }

    [Theory]
    [InlineData("TIMESTAMPTZ '2024-06-01 00:00:00+00' + INTERVAL (i * 30) MINUTE", 0)]
    [InlineData("TIMESTAMP '2024-06-01 00:00:00' + INTERVAL (i * 30) MINUTE", -60)]
    [InlineData("epoch(TIMESTAMP '2024-06-01 00:00:00' + INTERVAL (i * 30) MINUTE)::BIGINT", 0)]
    [InlineData("strftime(TIMESTAMP '2024-06-01 00:00:00' + INTERVAL (i * 30) MINUTE, '%Y-%m-%d %H:%M')", -60)]
    public void What_the_engine_writes_is_read_with_its_times_and_numbers(string time, int minutes)
    {
        var path = _places.At("engine.parquet");
        Ask($"""COPY (SELECT {time} AS "time", CASE WHEN i % 10 = 3 THEN NULL ELSE (i % 10) * 0.25 END::DOUBLE AS "import (kWh)", (i % 4 * 100)::INTEGER AS "export (Wh)", (i % 8 / 8.0)::DECIMAL(9, 3) AS "generation (kWh)" FROM range(200) t(i)) TO '{path}' (FORMAT parquet); SELECT 1""");
        var readings = Readings.Load(path, Dublin);
        Assert.Equal(["import", "export", "generation"], readings.Channels.Select(c => c.Name));
        Assert.Equal(Instant.FromUtc(2024, 6, 1, 0, 0) + Duration.FromMinutes(minutes), readings.Channels[0].Start);
        Assert.Equal([20 * 0.25 * (45 - 3), 50 * 0.6, 25 * 28 / 8.0], readings.Channels.Select(c => c.Total.Kwh).Select(k => Math.Round(k, 6)));
        Assert.Equal(20, ChannelQuality.Of(readings.Channels[0]).Missing);
    }

    [Fact]
    public void A_local_time_without_a_clock_is_refused()
    {
        var path = _places.At("local.parquet");
        Ask($"""COPY (SELECT TIMESTAMP '2024-06-01 00:00:00' + INTERVAL (i * 30) MINUTE AS "time", 1.0::DOUBLE AS "import (kWh)" FROM range(9) t(i)) TO '{path}' (FORMAT parquet); SELECT 1""");
        var file = Assert.Single(Inspection.Of([path]).Files);
        Assert.Equal((2, "to be told its clock"), (file.ExitCode, file.Problems[0].Expected[..20]));
    }

    [Fact]
    public void Columns_of_dates_are_whole_local_days_on_days_of_clock_changes()
    {
        var path = _places.At("days.parquet");
        Ask($"""COPY (SELECT DATE '2024-10-25' + i::INTEGER AS "date", 5.5::DOUBLE AS "generation (kWh)" FROM range(5) t(i)) TO '{path}' (FORMAT parquet); SELECT 1""");
        var channel = Assert.Single(Readings.Load(path, Dublin).Channels);
        Assert.Equal([24.0, 24, 25, 24, 24], Enumerable.Range(0, 5).Select(i => (channel.Ends[i] - channel.Starts[i]).TotalHours));
        Assert.Equal((27.5, 0), (channel.Total.Kwh, ChannelQuality.Of(channel).Missing));
    }

    [Fact]
    public async Task Times_of_96_bits_are_read_as_local_times_and_said()
    {
        var path = _places.At("int96.parquet");
        var (time, kwh) = (new DateTimeDataField("time", DateTimeFormat.Impala), new DataField<double>("import (kWh)"));
        await using (var stream = File.Create(path))
        await using (var writer = await ParquetWriter.CreateAsync(new ParquetSchema(time, kwh), stream))
        {
            using var group = writer.CreateRowGroup();
            await group.WriteAsync<DateTime>(time, Enumerable.Range(0, 48).Select(i => new DateTime(2024, 6, 1).AddMinutes(30 * i)).ToArray());
            await group.WriteAsync<double>(kwh, Enumerable.Repeat(0.25, 48).ToArray());
        }
        // The engine sees the same times, so the file holds what is meant.
        Assert.Equal("2024-06-01 00:00:00 2024-06-01 23:30:00", Ask($"SELECT strftime(min(time), '%Y-%m-%d %H:%M:%S') || ' ' || strftime(max(time), '%Y-%m-%d %H:%M:%S') FROM '{path}'"));
        var readings = Readings.Load(path, Dublin);
        Assert.Equal((Instant.FromUtc(2024, 5, 31, 23, 0), 12.0), (readings.Channels[0].Start, readings.Channels[0].Total.Kwh));
        Assert.Equal("times of 96 bits under \"time\", which do not say their clock", Assert.Single(readings.Problems).Found);
    }

    [Theory]
    [InlineData("[1.5, 2.5]", "the column \"phases\" of lists")]
    [InlineData("{'a': 1.5}", "the column \"phases\" of nested columns")]
    [InlineData("MAP {'a': 1.5}", "the column \"phases\" of maps")]
    public void Nested_columns_are_named_and_the_others_read(string nested, string words)
    {
        var path = _places.At("nested.parquet");
        Ask($"""COPY (SELECT TIMESTAMPTZ '2024-06-01 00:00:00+00' + INTERVAL (i * 30) MINUTE AS "time", 0.25::DOUBLE AS "import (kWh)", {nested} AS phases FROM range(48) t(i)) TO '{path}' (FORMAT parquet); SELECT 1""");
        var readings = Readings.Load(path, Dublin);
        Assert.Equal(12, Assert.Single(readings.Channels).Total.Kwh);
        Assert.Equal((words, Severity.Note), (Assert.Single(readings.Problems).Found, readings.Problems[0].Severity));
    }

    [Fact]
    public void A_file_of_nested_columns_alone_is_refused_with_their_names()
    {
        var path = _places.At("nested.parquet");
        Ask($$"""COPY (SELECT {'time': TIMESTAMP '2024-06-01 00:00:00', 'kWh': 1.5} AS reading FROM range(9) t(i)) TO '{{path}}' (FORMAT parquet); SELECT 1""");
        Assert.Contains("without plain columns (\"reading\" of nested columns)", Assert.Throws<RecordException>(() => Readings.Load(path, Dublin)).Message);
    }

    [Fact]
    public void Digits_below_a_millisecond_are_cut_and_said()
    {
        var path = _places.At("micros.parquet");
        Ask($"""COPY (SELECT TIMESTAMPTZ '2024-06-01 00:00:00.000250+00' + INTERVAL (i * 30) MINUTE AS "time", 0.25::DOUBLE AS "import (kWh)" FROM range(48) t(i)) TO '{path}' (FORMAT parquet); SELECT 1""");
        var readings = Readings.Load(path, Dublin);
        Assert.Equal((Instant.FromUtc(2024, 6, 1, 0, 0), 12.0), (readings.Channels[0].Start, readings.Channels[0].Total.Kwh));
        Assert.Equal("48 times under \"time\" with digits below a millisecond", Assert.Single(readings.Problems).Found);
    }

    [Fact]
    public void A_file_that_only_begins_as_parquet_is_refused_in_words() =>
        Assert.Contains("damaged Parquet", Assert.Throws<RecordException>(() => Readings.Load(_places.Write("cut.parquet", [.. "PAR1"u8, .. new byte[60]]), Dublin)).Message);
}
