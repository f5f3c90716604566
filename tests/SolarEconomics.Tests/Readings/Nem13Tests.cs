using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>NEM13: registers read every few months. The rows are made for the tests after the order of the standard's fields.</summary>
public sealed class Nem13Tests : IDisposable
{
    private const string Head = "100,NEM13,202404021200,MDP,RETAILER\n";
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private RecordContent Read(string rows) => RecordReaders.Read(_files.Write("meter.csv", Head + rows + "900\n"), new ReadOptions());

    private static string Row(string suffix = "11", string direction = "E", string from = "20240101000000", string to = "20240401000000", string previous = "1000", string current = "1900",
        string quality = "A", string quantity = "900", string unit = "kWh", string nmi = "4001234567", string register = "1", string updated = "20240402120000") =>
        $"250,{nmi},E1B1,{register},{suffix},{suffix},MTR1,{direction},{previous},{from},A,,,{current},{to},{quality},,,{quantity},{unit},20240701,{updated},\n";

    [Fact]
    public void A_period_between_two_readings_is_one_interval_on_the_clock_of_the_market()
    {
        var content = Read(Row() + "550,N,,N,\n");
        var channel = Assert.Single(content.Channels);
        Assert.Equal(("NEM13", "11", FlowKind.Import, "kWh", "4001234567"), (content.Format, channel.Name, channel.Flow, channel.Unit, channel.Meter));
        Assert.Equal((Instant.FromUtc(2023, 12, 31, 14, 0), Instant.FromUtc(2024, 3, 31, 14, 0), 900.0), (channel.Start, channel.End, channel.Total.Kwh));
        Assert.Equal(Offset.FromHours(10), content.Clock.GetUtcOffset(channel.Start!.Value));
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void E_leaves_the_grid_for_the_home_and_I_goes_to_the_grid()
    {
        var channels = Read(Row() + Row(suffix: "41", direction: "I", quantity: "450", unit: "Wh") + Row(suffix: "Q1", unit: "kVArh")).Channels;
        Assert.Equal([(FlowKind.Import, 900.0, true), (FlowKind.Export, 0.45, true), (FlowKind.Unknown, 900.0, false)], channels.Select(c => (c.Flow, c.Total.Kwh, c.IsEnergy)));
    }

    [Fact]
    public void Periods_in_any_order_follow_each_other_and_a_later_update_stands()
    {
        var content = Read(Row(from: "202404010000", to: "20240701", quantity: "600", quality: "F14") + Row() + Row(quantity: "910", updated: "20240501"));
        var channel = Assert.Single(content.Channels);
        Assert.Equal((2, 1510.0, 1), (channel.Count, channel.Total.Kwh, channel.ExtraReadings));
        Assert.Equal(Quality.Estimated, channel.Quality[1]);
        var problem = Assert.Single(content.Problems);
        Assert.Equal((Severity.Doubtful, 900.0), (problem.Severity, problem.UncountedKwh));
    }

    [Theory]
    [InlineData("A", 0, 0)]
    [InlineData("E52", 0, 1)]
    [InlineData("S53", 0, 1)]
    [InlineData("F51", 0, 1)]
    [InlineData("N", 1, 0)]
    public void Qualities_count_as_those_of_interval_data(string quality, int missing, int estimated)
    {
        var content = Read(Row(quality: quality));
        var found = ChannelQuality.Of(content.Channels[0]);
        Assert.Equal((missing, estimated), (found.Missing, found.Estimated));
        Assert.Equal(900, found.TotalKwh + content.Problems.Sum(p => p.UncountedKwh));
    }

    [Fact]
    public void A_register_that_goes_back_is_a_doubt_and_its_quantity_is_counted()
    {
        var content = Read(Row(previous: "99950", current: "00050", quantity: "100"));
        Assert.Equal((100.0, 1), (content.Channels[0].Total.Kwh, content.Channels[0].Resets));
        Assert.Contains("a register going back from 99950 to 00050", Assert.Single(content.Problems).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_meters_and_registers_are_channels_of_their_own() =>
        Assert.Equal(["4001234567 11 (register 1, kWh)", "4001234567 11 (register 2, kWh)", "4009999999 11"], Read(Row() + Row(register: "2") + Row(nmi: "4009999999")).Channels.Select(c => c.Name));

    [Fact]
    public void What_cannot_be_counted_is_listed_with_its_energy()
    {
        var content = Read(Row() + Row(from: "20240401", to: "20240401", quantity: "7") + Row(from: "20240401", to: "20240701", quantity: "") + "250,1\n260,x\n");
        Assert.Equal([7.0, 0, 0, 0], content.Problems.Select(p => p.UncountedKwh));
        Assert.All(content.Problems, p => Assert.Equal(Severity.Lost, p.Severity));
        Assert.Equal(1, ChannelQuality.Of(content.Channels[0]).Missing);
    }
}
