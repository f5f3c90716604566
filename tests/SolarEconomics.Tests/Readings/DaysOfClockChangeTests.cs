using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Daily and monthly totals around clock changes: a day of 25 hours is one day, not a day and an hour that is missing.</summary>
public sealed class DaysOfClockChangeTests : IDisposable
{
    private static readonly Site Dublin = Site.At("Test mill", 53, -9, "Europe/Dublin", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Theory]
    [InlineData("yyyy-MM-dd")]
    [InlineData("yyyy-MM-dd HH:mm")]
    [InlineData("dd.MM.yyyy 00:00:00")]
    public void Every_day_of_a_year_is_one_interval_from_midnight_to_midnight(string form)
    {
        var days = Enumerable.Range(0, 366).Select(i => new LocalDate(2024, 1, 1).PlusDays(i)).ToArray();
        var text = "day,generation (kWh)\n" + string.Concat(days.Select(d => $"{d.ToDateOnly().ToDateTime(default).ToString(form, System.Globalization.CultureInfo.InvariantCulture)},1.5\n"));
        var readings = Readings.Load(_files.Write("days.csv", text), Dublin);
        var channel = Assert.Single(readings.Channels);
        Assert.Equal((366, 366 * 1.5, 0), (channel.Count, channel.Total.Kwh, ChannelQuality.Of(channel).Missing));
        Assert.All(Enumerable.Range(0, 365), i => Assert.Equal(channel.Starts[i + 1], channel.Ends[i]));
        Assert.Equal([Duration.FromHours(23), Duration.FromHours(25)], new[] { new LocalDate(2024, 3, 31), new LocalDate(2024, 10, 27) }.Select(d => channel.Ends[Array.IndexOf(days, d)] - channel.Starts[Array.IndexOf(days, d)]));
        Assert.DoesNotContain(readings.Problems, p => p.Severity != Severity.Note);
    }

    [Fact]
    public void Days_stamped_at_their_end_end_there()
    {
        var text = "period end,generation (kWh)\n" + string.Concat(Enumerable.Range(0, 7).Select(i => $"{new LocalDate(2024, 10, 25).PlusDays(i):uuuu-MM-dd} 00:00,1\n"));
        var channel = Assert.Single(Readings.Load(_files.Write("days.csv", text), Dublin).Channels);
        Assert.Equal((7, 0), (channel.Count, ChannelQuality.Of(channel).Missing));
        // The row of the 28th holds the 27th, which had 25 hours.
        Assert.Equal(Duration.FromHours(25), channel.Ends[3] - channel.Starts[3]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-01 00:00")]
    public void Months_are_whole_local_months(string rest)
    {
        var readings = Readings.Load(_files.Write("months.csv", $"month,import (kWh)\n2024-02{rest},10\n2024-03{rest},11\n2024-04{rest},12\n2024-10{rest},13\n2024-11{rest},14\n"), Dublin);
        var channel = Assert.Single(readings.Channels);
        // March has 31 days and one hour less; May to September are missing.
        Assert.Equal(Duration.FromHours((31 * 24) - 1), channel.Ends[1] - channel.Starts[1]);
        Assert.Equal(Duration.FromHours((31 * 24) + 1), channel.Ends[3] - channel.Starts[3]);
        Assert.Equal(60, channel.Total.Kwh);
    }
}
