using NodaTime;

namespace SolarEconomics.Files.Tests;

/// <summary>What is written as Parquet or XLSX reads back to the same values and the same quality.</summary>
public sealed class RoundTripTests : IDisposable
{
    private static readonly Site Sydney = Site.At("Test", -33, 151, "Australia/Sydney", "AUD");
    private readonly Places _places = new();

    public void Dispose() => _places.Dispose();

    [Theory]
    [InlineData("nem12-5min-solar-month.csv", "parquet")]
    [InlineData("nem12-5min-solar-month.csv", "xlsx")]
    [InlineData("nem12-30min-quality-and-500.csv", "parquet")]
    [InlineData("nem12-30min-quality-and-500.csv", "xlsx")]
    [InlineData("espi-hourly-march-2011.xml", "parquet")]
    [InlineData("espi-hourly-march-2011.xml", "xlsx")]
    public void A_sample_reads_back_to_the_same_values_and_quality(string sample, string form)
    {
        var first = Readings.Load(Places.Sample(sample), Sydney);
        var path = _places.At("out." + form);
        if (form == "parquet") first.WriteParquet(path);
        else first.WriteXlsx(path);
        var second = Readings.Load(path, Sydney);
        Assert.Equal(first.Channels.Select(c => (c.Flow, c.Total)), second.Channels.Select(c => (c.Flow, c.Total)));
        foreach (var (a, b) in first.Channels.Zip(second.Channels)) Assert.Equal(Values(a), Values(b));
        Assert.DoesNotContain(second.Problems, p => p.Severity != Severity.Note);
        Assert.False(File.Exists(path + ".writing"));
    }

    [Fact]
    public void A_gap_and_the_repeated_autumn_hour_come_back()
    {
        var start = new LocalDate(2024, 10, 27).AtStartOfDayInZone(DateTimeZoneProviders.Tzdb["Europe/Berlin"]).ToInstant();
        var starts = Enumerable.Range(0, 25).Select(i => start + Duration.FromHours(i)).ToArray();
        var quality = new Quality[25];
        quality[4] = Quality.Missing;
        quality[5] = Quality.Estimated | Quality.Doubtful;
        var channel = new Channel("roof", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Range(0, 25).Select(i => i == 4 ? 0.0 : i / 7.0)], quality);
        var readings = new Readings([channel], [], []);
        readings.WriteParquet(_places.At("a.parquet"));
        readings.WriteXlsx(_places.At("a.xlsx"));
        foreach (var file in new[] { "a.parquet", "a.xlsx" })
        {
            var back = Assert.Single(Readings.Load(_places.At(file), Site.At("Test", 52, 13, "Europe/Berlin", "EUR")).Channels);
            Assert.Equal(Values(channel), Values(back));
        }
    }

    [Fact]
    public void Nothing_to_write_is_said_and_leaves_the_old_file()
    {
        var path = _places.Write("old.parquet", [1, 2, 3]);
        Assert.Contains("Found no channel of readings", Assert.Throws<InvalidOperationException>(() => new Readings([], [], []).WriteParquet(path)).Message);
        Assert.Equal(3, new FileInfo(path).Length);
    }

    private static List<(Instant, Instant, double, Quality)> Values(Channel channel) =>
        [.. Enumerable.Range(0, channel.Count).Where(i => !channel.Quality[i].HasFlag(Quality.Missing)).Select(i => (channel.Starts[i], channel.Ends[i], channel.Kwh[i], channel.Quality[i]))];
}
