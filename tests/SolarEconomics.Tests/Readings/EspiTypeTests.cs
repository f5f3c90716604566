using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What a reading leaves out and its type states: quality, length, how values add up.</summary>
public sealed class EspiTypeTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public void The_quality_of_the_type_holds_where_a_reading_states_none()
    {
        var quality = ChannelQuality.Of(Only(Read("<defaultQuality>8</defaultQuality>", Reading(0, 3600, 1), Reading(3600, 3600, 1, "<ReadingQuality><quality>0</quality></ReadingQuality>"), Reading(7200, 3600, 1))));
        Assert.Equal((3, 2), (quality.Readings, quality.Estimated));
    }

    [Fact]
    public void The_length_of_the_type_holds_where_a_reading_states_none()
    {
        var channel = Only(Read("<intervalLength>1800</intervalLength>", "<IntervalReading><timePeriod><start>7200</start></timePeriod><value>250</value></IntervalReading>"));
        Assert.Equal((0.25, Duration.FromMinutes(30)), (channel.Total.Kwh, channel.Ends[0] - channel.Starts[0]));
    }

    [Fact]
    public void Readings_without_a_time_follow_each_other_from_the_start_of_their_block()
    {
        var content = Read("<intervalLength>3600</intervalLength>", "<IntervalReading><value>1000</value></IntervalReading>", "<IntervalReading><value>2000</value></IntervalReading>");
        var channel = Only(content);
        Assert.Equal([86_400L, 90_000L], channel.Starts.Select(s => s.ToUnixTimeSeconds()));
        Assert.Equal([1.0, 2.0], channel.Kwh.ToArray());
        Assert.Equal(["no local time parameters"], content.Problems.Select(p => p.Found));
    }

    [Fact]
    public void A_reading_whose_length_nobody_states_is_lost_and_said()
    {
        var content = Read("", Reading(0, 3600, 500), "<IntervalReading><timePeriod><start>3600</start></timePeriod><value>70</value></IntervalReading>");
        Assert.Equal(0.5, Only(content).Total.Kwh);
        var problem = Assert.Single(content.Problems, p => p.Severity == Severity.Lost);
        Assert.Equal((3, "70"), (problem.Line, problem.Raw));
        Assert.Contains("intervalLength", problem.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1), InlineData(2), InlineData(3), InlineData(9)]
    public void States_of_a_register_are_never_added_up(int accumulation)
    {
        var channel = Only(Read($"<accumulationBehaviour>{accumulation}</accumulationBehaviour>", Reading(0, 3600, 81_000), Reading(3600, 3600, 81_500), Reading(7200, 3600, 82_500)));
        Assert.Equal([0.5, 1], channel.Kwh.ToArray());
        Assert.Equal(3, channel.CounterStates);
    }

    [Fact]
    public void A_register_by_its_type_that_goes_up_and_down_is_counted_as_energy_and_said()
    {
        var content = Read("<accumulationBehaviour>9</accumulationBehaviour>", [.. Enumerable.Range(0, 24).Select(i => Reading(i * 3600, 3600, 100 + (i % 2 * 50)))]);
        Assert.Equal(24 * 0.125, Only(content).Total.Kwh, 12);
        var problem = Assert.Single(content.Problems, p => p.Severity == Severity.Doubtful);
        Assert.Equal((2, "9"), (problem.Line, problem.Raw));
        Assert.Contains("called summation (accumulationBehaviour 9), a register that only rises, while its values fall 11 times in 24", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Energy_of_intervals_that_overlap_is_counted_whole_and_the_part_counted_twice_is_said()
    {
        var content = Read("", Reading(0, 3600, 1000), Reading(1800, 3600, 600), Reading(5400, 1800, 10));
        var channel = Only(content);
        Assert.Equal(1.61, channel.Total.Kwh, 12);
        Assert.Equal(Quality.Doubtful, channel.Quality[0]);
        var problem = Assert.Single(content.Problems, p => p.Severity == Severity.Doubtful);
        Assert.Equal("1 of \"import\" reaching into the interval after them, the first from 1970-01-01T00:00:00Z to 1970-01-01T01:00:00Z", problem.Found);
        Assert.EndsWith("up to 0.5 kWh may be counted twice", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Power_that_overlaps_is_counted_until_the_next_begins()
    {
        // By hand: 2 kW for half an hour, then 1 kW for an hour.
        var content = Read("<uom>38</uom>", Reading(0, 3600, 2000), Reading(1800, 3600, 1000));
        Assert.Equal(2.0, Only(content).Total.Kwh, 12);
        Assert.EndsWith("each was counted until the next begins", Assert.Single(content.Problems, p => p.Severity == Severity.Doubtful).Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<uom>169</uom>", "the unit code \"169\"", "169")]
    [InlineData("<powerOfTenMultiplier>x</powerOfTenMultiplier>", "the multiplier \"x\"", "x")]
    public void A_unit_that_is_not_known_is_said_where_it_stands(string field, string found, string raw)
    {
        var problem = Assert.Single(Read(field, Reading(0, 3600, 1)).Problems, p => p.Severity == Severity.Lost);
        Assert.Equal((2, raw, found), (problem.Line, problem.Raw, problem.Found));
    }

    private static Channel Only(RecordContent content) => Assert.Single(content.Channels);

    private static string Reading(int start, int duration, int value, string more = "") =>
        $"<IntervalReading><timePeriod><duration>{duration}</duration><start>{start}</start></timePeriod><value>{value}</value>{more}</IntervalReading>";

    /// <summary>A feed of one meter: the type's own fields stand in line 2, the readings in line 3.</summary>
    private RecordContent Read(string typeFields, params string[] readings)
    {
        var uom = typeFields.Contains("<uom>", StringComparison.Ordinal) ? "" : "<uom>72</uom>";
        return RecordReaders.Read(_files.Write("feed.xml", $"""
            <feed xmlns="http://www.w3.org/2005/Atom"><entry><link rel="self" href="/U/1/MeterReading/1"/><link rel="related" href="/ReadingType/1"/><content><MeterReading xmlns="http://naesb.org/espi"/></content></entry>
            <entry><link rel="self" href="/ReadingType/1"/><content><ReadingType xmlns="http://naesb.org/espi"><commodity>1</commodity><flowDirection>1</flowDirection>{uom}{typeFields}</ReadingType></content></entry>
            <entry><link rel="up" href="/U/1/MeterReading/1/IntervalBlock"/><content><IntervalBlock xmlns="http://naesb.org/espi"><interval><duration>86400</duration><start>86400</start></interval>{string.Concat(readings)}</IntervalBlock></content></entry></feed>
            """), new ReadOptions());
    }
}
