namespace SolarEconomics.Tests;

/// <summary>ESPI feeds as they are written: entries in any order, prefixes, shared types, several blocks in an entry, summaries between.</summary>
public sealed class EspiShapeTests : IDisposable
{
    private const string Summary = "<entry><link rel=\"self\" href=\"/U/1/UsageSummary/1\"/><content><e:UsageSummary><e:billLastPeriod>15303000</e:billLastPeriod><e:overallConsumptionLastPeriod><e:powerOfTenMultiplier>3</e:powerOfTenMultiplier><e:uom>72</e:uom><e:value>610314</e:value></e:overallConsumptionLastPeriod></e:UsageSummary></content></entry>";

    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public void Entries_may_stand_in_any_order_and_each_meter_reading_finds_its_type_by_its_related_link()
    {
        // Alone, neither the order nor a type of the feed says which is which: the links are crossed.
        var content = Read(Block(1, "a", 500), Type(1, 19), Block(1, "b", 100), Type(2, 1), Meter(1, "b", 1), Meter(1, "a", 2), Point(1));
        Assert.Equal([(FlowKind.Import, 1.0), (FlowKind.Export, 0.2)], content.Channels.Select(c => (c.Flow, c.Total.Kwh)));
    }

    [Fact]
    public void Usage_points_that_share_a_type_stay_apart()
    {
        var content = Read(Point(1), Meter(1, "a", 1), Type(1, 1), Block(1, "a", 500), Point(2), Meter(2, "a", 1), Block(2, "a", 700));
        Assert.Equal([("/U/1", 1.0), ("/U/2", 1.4)], content.Channels.Select(c => (c.Meter, c.Total.Kwh)));
    }

    [Fact]
    public void A_summary_of_a_bill_is_neither_a_reading_nor_a_type()
    {
        var content = Read(Point(1), Summary, Meter(1, "a", 1), Type(1, 1), Block(1, "a", 500), Summary);
        Assert.Equal(1.0, Assert.Single(content.Channels).Total.Kwh);
        Assert.Equal(["no local time parameters"], content.Problems.Select(p => p.Found));
    }

    [Fact]
    public void Several_blocks_of_one_entry_are_all_counted_with_their_costs()
    {
        var two = Block(1, "a", 500).Replace("</content>", "<e:IntervalBlock>" + Reading(7200, 250, 12_345) + "</e:IntervalBlock></content>", StringComparison.Ordinal);
        var channel = Assert.Single(Read(Point(1), Meter(1, "a", 1), Type(1, 1), two).Channels);
        Assert.Equal((1.25, 0.12345), (channel.Total.Kwh, channel.Costs[2]));
    }

    [Fact]
    public void Prefixes_may_be_on_the_feed_instead_of_on_the_resources()
    {
        var text = Text(Point(1), Meter(1, "a", 1), Type(1, 1), Block(1, "a", 500));
        foreach (var name in new[] { "feed", "entry", "link", "content" })
            text = text.Replace("<" + name, "<atom:" + name, StringComparison.Ordinal).Replace("</" + name, "</atom:" + name, StringComparison.Ordinal);
        text = text.Replace("e:", "", StringComparison.Ordinal).Replace("xmlns=", "xmlns:atom=", StringComparison.Ordinal).Replace("xmlns:e=", "xmlns=", StringComparison.Ordinal);
        Assert.Equal(1.0, Assert.Single(RecordReaders.Read(_files.Write("feed.xml", text), new ReadOptions()).Channels).Total.Kwh);
    }

    [Fact]
    public void A_whole_address_and_a_part_of_it_name_the_same_type()
    {
        var far = Meter(1, "a", 1).Replace("\"/ReadingType/1\"", "\"https://example.com/espi/1_1/resource/ReadingType/1\"", StringComparison.Ordinal);
        Assert.Equal(FlowKind.Export, Assert.Single(Read(Point(1), far, Type(2, 1), Type(1, 19), Block(1, "a", 500)).Channels).Flow);
    }

    private static string Point(int point) => $"<entry><link rel=\"self\" href=\"/U/{point}\"/><content><e:UsagePoint><e:ServiceCategory><e:kind>0</e:kind></e:ServiceCategory></e:UsagePoint></content></entry>";

    private static string Meter(int point, string meter, int type) =>
        $"<entry><link rel=\"self\" href=\"/U/{point}/MeterReading/{meter}\"/><link rel=\"related\" href=\"/U/{point}/MeterReading/{meter}/IntervalBlock\"/><link rel=\"related\" href=\"/ReadingType/{type}\"/><content><e:MeterReading/></content></entry>";

    private static string Type(int type, int direction) =>
        $"<entry><link rel=\"self\" href=\"/ReadingType/{type}\"/><content><e:ReadingType><e:accumulationBehaviour>4</e:accumulationBehaviour><e:commodity>1</e:commodity><e:flowDirection>{direction}</e:flowDirection><e:uom>72</e:uom></e:ReadingType></content></entry>";

    private static string Block(int point, string meter, int value) =>
        $"<entry><link rel=\"self\" href=\"/U/{point}/MeterReading/{meter}/IntervalBlock/1\"/><link rel=\"up\" href=\"/U/{point}/MeterReading/{meter}/IntervalBlock\"/><content><e:IntervalBlock>{Reading(0, value)}{Reading(3600, value)}</e:IntervalBlock></content></entry>";

    private static string Reading(int start, int value, int cost = 0) =>
        $"<e:IntervalReading><e:cost>{cost}</e:cost><e:timePeriod><e:duration>3600</e:duration><e:start>{start}</e:start></e:timePeriod><e:value>{value}</e:value></e:IntervalReading>";

    private static string Text(params string[] entries) => "<feed xmlns=\"http://www.w3.org/2005/Atom\" xmlns:e=\"http://naesb.org/espi\">" + string.Join('\n', entries) + "</feed>";

    private RecordContent Read(params string[] entries) => RecordReaders.Read(_files.Write("feed.xml", Text(entries)), new ReadOptions());
}
