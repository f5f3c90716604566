using NodaTime;

namespace SolarEconomics.Tests;

public sealed class WriteCsvTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Theory]
    [InlineData("nem12-5min-solar-month.csv")]
    [InlineData("nem12-30min-quality-and-500.csv")]
    [InlineData("espi-hourly-march-2011.xml")]
    public void What_is_written_reads_back_to_the_same_values(string sample)
    {
        var site = Site.At("Test", -33, 151, "Australia/Sydney", "AUD");
        var first = Readings.Load(TestFiles.Sample(sample), site);
        var path = _files.Write("canonical.csv", "");
        first.WriteCsv(path);
        var second = Readings.Load(path, site);
        Assert.Equal(first.Channels.Count, second.Channels.Count);
        foreach (var (a, b) in first.Channels.Zip(second.Channels))
        {
            Assert.Equal((a.Flow, a.Total.Kwh), (b.Flow, b.Total.Kwh));
            Assert.Equal(Values(a), Values(b));
        }
        Assert.DoesNotContain(second.Problems, p => p.Severity != Severity.Note);
    }

    private static IEnumerable<(Instant, Instant, double)> Values(Channel channel) =>
        Enumerable.Range(0, channel.Count).Where(i => !channel.Quality[i].HasFlag(Quality.Missing)).Select(i => (channel.Starts[i], channel.Ends[i], channel.Kwh[i])).ToList();

    [Fact]
    public void Channels_of_different_intervals_are_refused_with_the_way_out()
    {
        var start = Instant.FromUtc(2024, 6, 1, 0, 0);
        Channel Of(string name, int minutes) => new(name, FlowKind.Import, [start], [start + Duration.FromMinutes(minutes)], [1.0], [Quality.Good]);
        var error = Assert.Throws<InvalidOperationException>(() => new Readings([Of("a", 30), Of("b", 60)], [], []).WriteCsv(_files.Write("out.csv", "")));
        Assert.Contains("InStepsOf", error.Message);
    }
}
