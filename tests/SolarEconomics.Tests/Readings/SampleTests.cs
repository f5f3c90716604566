using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>The totals that stand beside the published sample files (tests/data/readings/README.md names their origin).</summary>
public sealed class SampleTests
{
    private static readonly Site Sydney = Site.At("Sample", -33.9, 151.2, "Australia/Sydney", "AUD");
    private static readonly Offset MarketTime = Offset.FromHours(10);

    private static Instant Market(int year, int month, int day) => new LocalDateTime(year, month, day, 0, 0).WithOffset(MarketTime).ToInstant();

    [Fact]
    public void The_solar_month_gives_its_stated_totals()
    {
        var readings = Readings.Load(TestFiles.Sample("nem12-5min-solar-month.csv"), Sydney);
        var (export, import) = (readings.Channels.Single(c => c.Name == "B1"), readings.Channels.Single(c => c.Name == "E1"));
        Assert.Equal((FlowKind.Import, FlowKind.Export), (import.Flow, export.Flow));
        Assert.Equal((8928, 8928), (import.Count, export.Count));
        Assert.Equal(270.738000, import.Total.Kwh, 9);
        Assert.Equal(589.172000, export.Total.Kwh, 9);
        Assert.Equal((Market(2023, 3, 1), Market(2023, 4, 1)), (import.Start!.Value, import.End!.Value));
        Assert.All(readings.Quality.Channels, q => Assert.Equal((0, 0, 0, 0), (q.Missing, q.Estimated, q.Repeated, q.Negative)));
        Assert.Empty(readings.Problems);
    }

    [Fact]
    public void The_market_test_file_gives_its_stated_totals()
    {
        var readings = Readings.Load(TestFiles.Sample("nem12-30min-quality-and-500.csv"), Sydney);
        var stated = new[]
        {
            ("E1", FlowKind.Import, 96, 45.779000, 28, Market(2005, 3, 1), Market(2005, 3, 3)),
            ("E2", FlowKind.Import, 96, 58.588000, 20, Market(2005, 3, 2), Market(2005, 3, 4)),
            ("B2", FlowKind.Export, 96, 55.980000, 20, Market(2005, 3, 2), Market(2005, 3, 4)),
        };
        Assert.Equal(stated.Length, readings.Channels.Count);
        foreach (var (name, flow, count, kwh, estimated, start, end) in stated)
        {
            var quality = readings.Quality.Channels.Single(q => q.Channel.Name == name);
            Assert.Equal((flow, count, estimated, 0, 0), (quality.Channel.Flow, quality.Readings, quality.Estimated, quality.Missing, quality.Repeated));
            Assert.Equal(kwh, quality.TotalKwh, 9);
            Assert.Equal((start, end), (quality.Channel.Start!.Value, quality.Channel.End!.Value));
        }
        Assert.Empty(readings.Problems);
    }

    [Fact]
    public void The_hourly_feed_gives_its_stated_totals()
    {
        var content = RecordReaders.Read(TestFiles.Sample("espi-hourly-march-2011.xml"), new ReadOptions());
        var channel = Assert.Single(content.Channels);
        Assert.Equal((FlowKind.Import, 743, "Wh"), (channel.Flow, channel.Count, channel.Unit));
        Assert.Equal(Instant.FromUtc(2011, 3, 1, 5, 0), channel.Start);
        Assert.Equal(Instant.FromUtc(2011, 4, 1, 4, 0), channel.End);
        Assert.Equal(2278.213000, channel.Total.Kwh, 9);
        Assert.Equal(248.402460, channel.Costs.Sum(), 9);
        Assert.Equal("USD", channel.CostCurrency!.Value.Code);
        Assert.Equal(Duration.FromHours(1), channel.Step);
        Assert.Equal(Duration.FromHours(23), LocalDays.LengthOf(new LocalDate(2011, 3, 13), content.Clock));
        Assert.Equal(0, ChannelQuality.Of(channel).Missing);
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void The_daily_table_gives_its_stated_totals_once_its_unit_is_said()
    {
        var site = Site.At("Germany", 51, 10, "Europe/Berlin", "EUR");
        var readings = Readings.Load(TestFiles.Sample("daily-solar-wind-load-2006-2017.csv"), site, new ReadOptions { UnitWhereNone = "GWh" });
        var stated = new[]
        {
            ("Consumption", FlowKind.Use, 4383, 0, 5867416.187390),
            ("Wind", FlowKind.Generation, 2920, 1463, 481257.384000),
            ("Solar", FlowKind.Generation, 2188, 2195, 195298.024000),
        };
        foreach (var (name, flow, count, missing, gwh) in stated)
        {
            var quality = readings.Quality.Channels.Single(q => q.Channel.Name == name);
            Assert.Equal((flow, count, missing), (quality.Channel.Flow, quality.Readings, quality.Missing));
            Assert.Equal(gwh, quality.TotalKwh / 1e6, 6);
        }
        Assert.Equal(FlowKind.Unknown, readings.Channels.Single(c => c.Name == "Wind+Solar").Flow);
        var solar = readings.Channels.Single(c => c.Name == "Solar");
        foreach (var (year, gwh) in new[] { (2012, 27887.332000), (2013, 29559.780000), (2014, 32498.307000), (2015, 34907.138000), (2016, 34562.824000), (2017, 35882.643000) })
            Assert.Equal(gwh, SumOfYear(solar, year, site.Zone) / 1e6, 6);
    }

    private static double SumOfYear(Channel channel, int year, DateTimeZone zone)
    {
        var sum = 0.0;
        for (var i = 0; i < channel.Count; i++)
            if (channel.Starts[i].InZone(zone).Year == year && !channel.Quality[i].HasFlag(Quality.Missing)) sum += channel.Kwh[i];
        return sum;
    }

    [Fact]
    public void The_daily_table_without_a_said_unit_is_kept_and_counted_nowhere()
    {
        var readings = Readings.Load(TestFiles.Sample("daily-solar-wind-load-2006-2017.csv"), Site.At("Germany", 51, 10, "Europe/Berlin", "EUR"));
        Assert.All(readings.Channels, c => Assert.False(c.IsEnergy));
        Assert.Contains(readings.Problems, p => p.Severity == Severity.Lost && p.Found.Contains("add up to 195298.024000 kWh if they are kWh, and to 195.298024 kWh if they are Wh"));
    }
}
