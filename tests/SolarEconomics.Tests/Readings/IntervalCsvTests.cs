using NodaTime;

namespace SolarEconomics.Tests;

public sealed class IntervalCsvTests : IDisposable
{
    private static readonly Site Mill = Site.At("Test mill", 53, -9, "Europe/Dublin", "EUR") with
    {
        Plant = new Plant([new Device("south roof", MeasurementPoint.InverterAcOut) { RatedKwp = 4 }]),
    };

    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private Readings Read(string text, ReadOptions? options = null) => Readings.Load(_files.Write("meter.csv", text), Mill, options);

    [Fact]
    public void A_plain_file_gives_one_channel_for_each_column()
    {
        var readings = Read("# Invented data for a test\nstart,import (kWh),export (kWh),generation south roof (kWh),battery full\n"
            + "2024-06-01 00:00,0.25,0,0,0\n2024-06-01 00:30,0.5,0.125,1.5,1\n2024-06-01 01:00,,0,0.25,0\n");
        Assert.Equal(["import", "export", "generation south roof"], readings.Channels.Select(c => c.Name));
        Assert.Equal([FlowKind.Import, FlowKind.Export, FlowKind.Generation], readings.Channels.Select(c => c.Flow));
        var generation = readings.Channels[2];
        Assert.Equal(("south roof", MeasurementPoint.InverterAcOut), (generation.Device, generation.Point));
        Assert.Equal([0, 1.5, 0.25], generation.Kwh.ToArray());
        Assert.Equal([Quality.Good, Quality.Censored, Quality.Good], generation.Quality.ToArray());
        var import = readings.Channels[0];
        Assert.Equal(0.75, import.Total.Kwh);
        Assert.Equal([Quality.Good, Quality.Good, Quality.Missing], import.Quality.ToArray());
        // Dublin keeps summer time in June: midnight there is 23:00 UTC.
        Assert.Equal(Instant.FromUtc(2024, 5, 31, 23, 0), import.Start);
        Assert.Equal(Instant.FromUtc(2024, 6, 1, 0, 30), import.End);
        Assert.Equal(Duration.FromMinutes(30), import.Step);
        Assert.Empty(readings.Problems);
    }

    [Fact]
    public void A_repeated_autumn_hour_is_counted_once_per_row()
    {
        // Dublin, 27 October 2024: 01:00 to 02:00 stands twice.
        var readings = Read("start,import (kWh)\n2024-10-27 00:30,1\n2024-10-27 01:00,2\n2024-10-27 01:30,3\n2024-10-27 01:00,4\n2024-10-27 01:30,5\n2024-10-27 02:00,6\n");
        var import = Assert.Single(readings.Channels);
        Assert.Equal(21, import.Total.Kwh);
        Assert.Equal(Duration.FromMinutes(30), import.Step);
        Assert.Equal(Duration.FromHours(3), import.End - import.Start);
        Assert.Equal([1, 2, 3, 4, 5, 6], import.Kwh.ToArray());
        Assert.Equal(Severity.Note, Assert.Single(readings.Problems).Severity);
    }

    [Fact]
    public void A_repeated_hour_that_stands_once_is_read_as_the_first_and_reported()
    {
        var readings = Read("start,import (kWh)\n2024-10-27 00:30,1\n2024-10-27 01:00,2\n2024-10-27 01:30,3\n2024-10-27 02:00,6\n2024-10-27 02:30,1\n");
        var import = Assert.Single(readings.Channels);
        Assert.Equal(13, import.Total.Kwh);
        var gap = Assert.Single(ChannelQuality.Of(import).Gaps);
        Assert.Equal(Instant.FromUtc(2024, 10, 27, 1, 0), gap.Start);
        Assert.Equal(2, gap.Intervals);
        Assert.Contains("on only once", Assert.Single(readings.Problems).Found);
    }

    [Fact]
    public void A_file_that_starts_inside_the_repeated_hour_is_doubtful()
    {
        var readings = Read("start,import (kWh)\n2024-10-27 01:00,2\n2024-10-27 01:30,3\n2024-10-27 02:00,6\n2024-10-27 02:30,6\n");
        Assert.Contains(readings.Problems, p => p is { Severity: Severity.Doubtful, Line: 2 } && p.Found.Contains("showed twice"));
    }

    [Fact]
    public void A_row_in_the_skipped_spring_hour_is_reported_with_its_energy_and_not_counted()
    {
        var readings = Read("start,import (kWh)\n2024-03-31 00:00,1\n2024-03-31 00:30,1\n2024-03-31 01:30,0.75\n2024-03-31 02:00,1\n");
        Assert.Equal(3, Assert.Single(readings.Channels).Total.Kwh);
        var problem = Assert.Single(readings.Problems);
        Assert.Equal((Severity.Lost, 4, 1, "2024-03-31 01:30", 0.75), (problem.Severity, problem.Line, problem.Column, problem.Raw, problem.UncountedKwh));
        Assert.Equal("meter.csv, line 4, column 1: found a time that Europe/Dublin skipped that day, expected no time in the hour that the clock jumped over. "
            + "If the device keeps standard time all year, give that fixed zone, for example UTC; the row was not counted", problem.ToString());
        // The jump itself is no gap: 00:30 GMT is followed by 02:00 summer time without a hole.
        Assert.Equal(0, ChannelQuality.Of(readings.Channels[0]).Missing);
    }

    [Fact]
    public void A_policy_moves_a_row_of_the_skipped_hour_on_and_says_so()
    {
        var readings = Read("start,import (kWh)\n2024-03-31 00:30,1\n2024-03-31 01:00,0.75\n2024-03-31 02:30,1\n",
            new ReadOptions { StampPolicy = new StampPolicy(RepeatedHour.ByRowOrder, SkippedHour.Forward) });
        Assert.Equal(2.75, Assert.Single(readings.Channels).Total.Kwh);
        Assert.Equal(Severity.Doubtful, Assert.Single(readings.Problems).Severity);
    }

    [Fact]
    public void Gaps_say_where_and_how_long()
    {
        var readings = Read("start,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,\n2024-06-01 01:00,1\n2024-06-01 03:00,1\n2024-06-01 03:30,1\n");
        var quality = Assert.Single(readings.Quality.Channels);
        Assert.Equal((4, 4), (quality.Readings, quality.Missing));
        Assert.Equal(
            [new Gap(Instant.FromUtc(2024, 5, 31, 23, 30), Instant.FromUtc(2024, 6, 1, 0, 0), 1), new Gap(Instant.FromUtc(2024, 6, 1, 0, 30), Instant.FromUtc(2024, 6, 1, 2, 0), 3)],
            quality.Gaps);
        Assert.Equal("50.0 % of intervals read", readings.Quality.Say(System.Globalization.CultureInfo.InvariantCulture).Figure);
    }

    [Fact]
    public void Repeated_rows_are_counted_once_and_their_energy_is_listed()
    {
        var readings = Read("start,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,2\n2024-06-01 00:30,2\n2024-06-01 01:00,3\n2024-06-01 00:00,1.5\n");
        Assert.Equal(6, Assert.Single(readings.Channels).Total.Kwh);
        Assert.Equal(2, readings.Quality.Channels[0].Repeated);
        Assert.Equal(3.5, readings.Problems.Sum(p => p.UncountedKwh));
        Assert.Equal([Severity.Note, Severity.Doubtful], readings.Problems.OrderBy(p => p.Severity).Select(p => p.Severity));
    }

    [Fact]
    public void A_number_that_cannot_be_read_is_reported_with_its_place_and_counts_as_missing()
    {
        var readings = Read("start,import (kWh),export (kWh)\n2024-06-01 00:00,1,0\n2024-06-01 00:30,1x2,7\n2024-06-01 01:00,1\n");
        Assert.Equal([(3, 2, "1x2"), (4, 3, "2024-06-01 01:00,1")], readings.Problems.Select(p => (p.Line, p.Column, p.Raw)));
        Assert.Equal([2.0, 7.0], readings.Channels.Select(c => c.Total.Kwh));
    }

    [Fact]
    public void A_device_that_the_plant_does_not_name_is_noted_with_the_nearest_name()
    {
        var readings = Read("start,generation south rof (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,1\n");
        Assert.Contains("such as south roof", Assert.Single(readings.Problems).Expected);
        Assert.Equal(("south rof", MeasurementPoint.Unknown), (readings.Channels[0].Device, readings.Channels[0].Point));
    }

    [Fact]
    public void A_frame_holds_the_values_and_leaves_missing_ones_missing()
    {
        var frame = Read("start,import (kWh),export (kWh)\n2024-06-01 00:00,1,0\n2024-06-01 00:30,,2\n").ToFrame();
        Assert.Equal((2, 2), (frame.RowCount, frame.ColumnCount));
        Assert.False(frame.GetColumn<double>("import").TryGet(Instant.FromUtc(2024, 5, 31, 23, 30)).HasValue);
        Assert.Equal(2, frame.GetColumn<double>("export").Get(Instant.FromUtc(2024, 5, 31, 23, 30)));
    }

    [Theory]
    [InlineData("", "found an empty file")]
    [InlineData("hello\nworld\n", "found no line with a time and a number (it begins \"hello\")")]
    [InlineData("start,import (kWh)\n2024-13-01 00:00,1\n", "found no line with a time and a number")]
    public void A_file_without_readings_is_one_clear_message(string text, string message) =>
        Assert.Contains(message, Assert.Throws<RecordException>(() => Read(text)).Message);

    [Fact]
    public void A_missing_file_is_one_clear_message() =>
        Assert.StartsWith("no-such.csv: found no file (looked in ", Assert.Throws<RecordException>(() => Readings.Load("no-such.csv", Mill)).Message);

    [Fact]
    public void Monthly_files_are_joined_and_their_overlap_is_counted_once()
    {
        var first = _files.Write("a.csv", "start,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 00:30,2\n2024-06-01 01:00,4\n");
        var second = _files.Write("b.csv", "start,import (kWh)\n2024-06-01 01:00,4\n2024-06-01 01:30,8\n2024-06-01 02:00,16\n");
        var readings = Readings.Load([first, second], Mill);
        var import = Assert.Single(readings.Channels);
        Assert.Equal(31, import.Total.Kwh);
        Assert.Equal(4, Assert.Single(readings.Problems).UncountedKwh);
        Assert.Equal(1, import.ExtraReadings);
    }
}
