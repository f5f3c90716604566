using NodaTime;

namespace SolarEconomics.Tests;

public sealed class Nem12Tests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private RecordContent Read(string body, string end = "900\n") =>
        RecordReaders.Read(_files.Write("meter.csv", "100,NEM12,202401010000,A,B\n" + body + end), new ReadOptions());

    private static string Stream(string suffix, string unit = "kWh", int minutes = 30, string nmi = "NMI1") => $"200,{nmi},E1,1,{suffix},N1,M1,{unit},{minutes},\n";

    private static string Day(string date, double value, string quality = "A", string updated = "20240201000000") =>
        FormattableString.Invariant($"300,{date},{string.Join(',', Enumerable.Repeat(value.ToString(System.Globalization.CultureInfo.InvariantCulture), 48))},{quality},,,{updated},\n");

    [Fact]
    public void Null_intervals_are_missing_and_their_values_are_listed()
    {
        var content = Read(Stream("E1") + Day("20240101", 1, "V") + "400,1,40,A,,\n400,41,44,N,,\n400,45,48,S14,32,\n");
        var quality = ChannelQuality.Of(Assert.Single(content.Channels));
        Assert.Equal((44, 4, 4, 44.0), (quality.Readings, quality.Missing, quality.Estimated, quality.TotalKwh));
        Assert.Equal(4, content.Problems.Sum(p => p.UncountedKwh));
        Assert.All(content.Problems, p => Assert.Equal(Severity.Note, p.Severity));
    }

    [Theory]
    [InlineData("A", 0, 0)]
    [InlineData("E52", 48, 0)]
    [InlineData("F51", 48, 0)]
    [InlineData("S", 48, 0)]
    [InlineData("N", 0, 48)]
    public void A_quality_of_the_whole_day_marks_every_interval(string flag, int estimated, int missing)
    {
        var quality = ChannelQuality.Of(Read(Stream("E1") + Day("20240101", 0, flag)).Channels[0]);
        Assert.Equal((estimated, missing), (quality.Estimated, quality.Missing));
    }

    [Fact]
    public void Days_in_any_order_are_put_in_order_and_a_left_out_day_is_a_gap()
    {
        var content = Read(Stream("E1") + Day("20240104", 4) + Day("20240101", 1) + Day("20240102", 2));
        var channel = content.Channels[0];
        Assert.Equal(48 * 7, channel.Total.Kwh);
        Assert.Equal([1, 2, 4], new[] { channel.Kwh[0], channel.Kwh[48], channel.Kwh[96] });
        Assert.Equal(48, ChannelQuality.Of(channel).Missing);
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void Of_two_readings_of_a_day_the_later_update_is_counted_and_the_other_listed()
    {
        var content = Read(Stream("E1") + Day("20240101", 1, "S14", "20240102000000") + Day("20240101", 2, "A", "20240110000000"));
        var quality = ChannelQuality.Of(content.Channels[0]);
        Assert.Equal((96.0, 48, 0), (quality.TotalKwh, quality.Repeated, quality.Estimated));
        var problem = Assert.Single(content.Problems);
        Assert.Equal((48.0, Severity.Doubtful), (problem.UncountedKwh, problem.Severity));
    }

    [Fact]
    public void Meters_and_suffixes_are_channels_of_their_own()
    {
        var content = Read(Stream("E1") + Day("20240101", 1) + Stream("B1") + Day("20240101", 2) + Stream("E1", nmi: "NMI2") + Day("20240101", 3) + Stream("Q1", "kVArh") + Day("20240101", 9));
        Assert.Equal([("NMI1 E1", FlowKind.Import), ("NMI1 B1", FlowKind.Export), ("NMI2 E1", FlowKind.Import), ("NMI1 Q1", FlowKind.Unknown)], content.Channels.Select(c => (c.Name, c.Flow)));
        Assert.Equal([true, true, true, false], content.Channels.Select(c => c.IsEnergy));
    }

    [Fact]
    public void A_day_with_too_few_values_is_lost_with_its_energy()
    {
        var content = Read(Stream("E1") + Day("20240101", 1) + "300,20240102,1,1,1,A,,,,\n300,20240103,1,1\n");
        Assert.Equal(48, content.Channels[0].Total.Kwh);
        Assert.Equal([(4, 3.0, Severity.Lost), (5, 2.0, Severity.Lost)], content.Problems.Select(p => (p.Line, p.UncountedKwh, p.Severity)));
    }

    [Fact]
    public void A_file_that_ends_without_its_end_record_is_doubtful() =>
        Assert.Equal(Severity.Doubtful, Assert.Single(Read(Stream("E1") + Day("20240101", 1), "").Problems).Severity);

    [Fact]
    public void The_clock_has_no_daylight_saving() =>
        Assert.Equal(new LocalDateTime(2024, 1, 1, 0, 0).WithOffset(Offset.FromHours(10)).ToInstant(), Read(Stream("E1") + Day("20240101", 1)).Channels[0].Start);

    [Fact]
    public void Watt_hours_become_kilowatt_hours() =>
        Assert.Equal(0.048, Read(Stream("E1", "Wh") + Day("20240101", 1)).Channels[0].Total.Kwh, 12);
}
