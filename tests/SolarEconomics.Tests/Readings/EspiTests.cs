using NodaTime;

namespace SolarEconomics.Tests;

public sealed class EspiTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private RecordContent Read(string entries) => RecordReaders.Read(
        _files.Write("feed.xml", "<?xml version=\"1.0\"?><feed xmlns=\"http://www.w3.org/2005/Atom\">" + entries + "</feed>"), new ReadOptions());

    private static string Meter(string id, string type) =>
        $"<entry><link rel=\"self\" href=\"/U/1/MeterReading/{id}\"/><link rel=\"related\" href=\"/U/1/MeterReading/{id}/IntervalBlock\"/><link rel=\"related\" href=\"/ReadingType/{type}\"/><title>reading {id}</title><content><MeterReading xmlns=\"http://naesb.org/espi\"/></content></entry>";

    private static string Type(string id, int flow, int multiplier = 0, int uom = 72, int accumulation = 4) =>
        $"<entry><link rel=\"self\" href=\"/ReadingType/{id}\"/><content><ReadingType xmlns=\"http://naesb.org/espi\"><accumulationBehaviour>{accumulation}</accumulationBehaviour><commodity>1</commodity><flowDirection>{flow}</flowDirection><powerOfTenMultiplier>{multiplier}</powerOfTenMultiplier><uom>{uom}</uom></ReadingType></content></entry>";

    private static string Block(string meter, params (int Start, int Value, int Quality)[] readings) =>
        $"<entry><link rel=\"self\" href=\"/U/1/MeterReading/{meter}/IntervalBlock/1\"/><link rel=\"up\" href=\"/U/1/MeterReading/{meter}/IntervalBlock\"/><content><IntervalBlock xmlns=\"http://naesb.org/espi\"><interval><duration>86400</duration><start>0</start></interval>"
        + string.Concat(readings.Select(r => $"<IntervalReading><timePeriod><duration>3600</duration><start>{r.Start}</start></timePeriod><value>{r.Value}</value><ReadingQuality><quality>{r.Quality}</quality></ReadingQuality></IntervalReading>"))
        + "</IntervalBlock></content></entry>";

    [Fact]
    public void Flows_are_channels_of_their_own_and_types_may_stand_before_or_after()
    {
        var content = Read(Type("1", 1) + Meter("1", "1") + Meter("2", "2") + Block("1", (0, 912, 0), (3600, 88, 0)) + Block("2", (0, 12, 0)) + Type("2", 19, 3));
        Assert.Equal([(FlowKind.Import, 1.0), (FlowKind.Export, 12.0)], content.Channels.Select(c => (c.Flow, c.Total.Kwh)));
        Assert.Equal("no local time parameters", Assert.Single(content.Problems).Found);
    }

    [Fact]
    public void Estimated_readings_are_counted_as_such()
    {
        var quality = ChannelQuality.Of(Read(Type("1", 1) + Meter("1", "1") + Block("1", (0, 1, 8), (3600, 1, 9), (7200, 1, 12), (10800, 1, 19))).Channels[0]);
        Assert.Equal((4, 3), (quality.Readings, quality.Estimated));
    }

    [Fact]
    public void A_repeated_reading_is_counted_once_and_a_left_out_one_is_a_gap()
    {
        var content = Read(Type("1", 1) + Meter("1", "1") + Block("1", (0, 1000, 0), (0, 1000, 0), (7200, 500, 0)));
        var quality = ChannelQuality.Of(content.Channels[0]);
        Assert.Equal((1.5, 1, 1), (quality.TotalKwh, quality.Repeated, quality.Missing));
        Assert.Equal([1.0, 0], content.Problems.Select(p => p.UncountedKwh));
    }

    [Fact]
    public void Cumulative_values_are_states_of_a_counter()
    {
        var channel = Read(Type("1", 1, accumulation: 3) + Meter("1", "1") + Block("1", (0, 1000, 0), (3600, 1500, 0), (7200, 2500, 0))).Channels[0];
        Assert.Equal([0.5, 1], channel.Kwh.ToArray());
    }

    [Fact]
    public void Net_flow_and_reactive_energy_are_added_to_nothing()
    {
        var content = Read(Type("1", 4) + Type("2", 1, uom: 73) + Meter("1", "1") + Meter("2", "2") + Block("1", (0, -500, 0)) + Block("2", (0, 7, 0)));
        Assert.All(content.Channels, c => Assert.Equal(FlowKind.Unknown, c.Flow));
        Assert.Equal([true, false], content.Channels.Select(c => c.IsEnergy));
    }

    [Fact]
    public void A_feed_cut_off_keeps_what_stands_before_and_says_where()
    {
        var whole = File.ReadAllText(TestFiles.Sample("espi-hourly-march-2011.xml"));
        var content = RecordReaders.Read(_files.Write("cut.xml", whole[..(whole.Length / 2)]), new ReadOptions());
        Assert.InRange(content.Channels[0].Count, 300, 743);
        Assert.Contains(content.Problems, p => p.Severity == Severity.Lost && p.Line > 0 && p.Found.StartsWith("XML that cannot be read further", StringComparison.Ordinal));
    }

    [Fact]
    public void Growing_entities_are_refused()
    {
        var path = _files.Write("laughs.xml", "<?xml version=\"1.0\"?><!DOCTYPE feed [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><feed xmlns:e=\"http://naesb.org/espi\">&b;</feed>");
        var error = Assert.Throws<RecordException>(() => RecordReaders.Read(path, new ReadOptions()));
        Assert.Contains("DTD is prohibited", Assert.Single(error.Problems).Found);
    }

    [Fact]
    public void The_packed_rules_of_the_sample_are_the_second_sunday_of_march_and_the_first_of_november()
    {
        Assert.Equal(new LocalDateTime(2011, 3, 13, 2, 0), SeasonRule.Of("360E2000")!.Value.In(2011));
        Assert.Equal(new LocalDateTime(2011, 11, 6, 2, 0), SeasonRule.Of("B40E2000")!.Value.In(2011));
    }

    [Fact]
    public void A_clock_by_rules_agrees_with_the_zone_database_for_its_years()
    {
        var rules = new SeasonZone(Offset.FromHours(-5), Offset.FromHours(1), SeasonRule.Of("360E2000")!.Value, SeasonRule.Of("B40E2000")!.Value);
        var known = DateTimeZoneProviders.Tzdb["America/New_York"];
        for (var at = Instant.FromUtc(2008, 1, 1, 0, 30); at < Instant.FromUtc(2024, 1, 1, 0, 0); at += Duration.FromHours(1))
            Assert.True(known.GetUtcOffset(at) == rules.GetUtcOffset(at), at.ToString());
    }
}
