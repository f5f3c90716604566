using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

public sealed class CompletenessCalendarTests
{
    private static readonly DateTimeZone Berlin = DateTimeZoneProviders.Tzdb["Europe/Berlin"];

    private static Channel Hours(LocalDate first, int hours, Func<int, Quality> quality)
    {
        var start = first.AtStartOfDayInZone(Berlin).ToInstant();
        var starts = Enumerable.Range(0, hours).Select(i => start + Duration.FromHours(i)).ToArray();
        var flags = Enumerable.Range(0, hours).Select(quality).ToArray();
        return new Channel("roof", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. flags.Select(f => f.HasFlag(Quality.Missing) ? 0 : 0.5)], flags);
    }

    [Fact]
    public void Days_of_23_and_25_hours_are_whole_days()
    {
        var spring = CompletenessCalendar.Of(Hours(new LocalDate(2024, 3, 30), 24 + 23 + 24, _ => Quality.Good), Berlin);
        Assert.Equal([24.0, 23, 24], spring.Days.Select(d => d.ReadHours));
        Assert.Equal((3, 1.0), (spring.WholeDays, spring.Share));
        var autumn = CompletenessCalendar.Of(Hours(new LocalDate(2024, 10, 26), 24 + 25 + 24, _ => Quality.Good), Berlin);
        Assert.Equal([12.0, 12.5, 12], autumn.Days.Select(d => d.Kwh));
    }

    [Fact]
    public void Missing_and_estimated_hours_stand_in_their_days()
    {
        var calendar = CompletenessCalendar.Of(Hours(new LocalDate(2024, 6, 1), 72, i => i is >= 30 and < 36 ? Quality.Missing : i >= 60 ? Quality.Estimated : Quality.Good), Berlin);
        Assert.Equal([24.0, 18, 24], calendar.Days.Select(d => d.ReadHours));
        Assert.Equal([0.0, 0, 12], calendar.Days.Select(d => d.GuessedHours));
        Assert.Equal((2, 66 / 72.0), (calendar.WholeDays, calendar.Share));
        Assert.Contains("91.7 %", calendar.Say(CultureInfo.InvariantCulture).Figure);
    }

    [Fact]
    public void An_interval_over_midnight_counts_by_its_time_on_each_side()
    {
        var start = new LocalDateTime(2024, 6, 1, 18, 0).InZoneStrictly(Berlin).ToInstant();
        var channel = new Channel("roof", FlowKind.Generation, [start], [start + Duration.FromHours(8)], [8], [Quality.Good]);
        Assert.Equal([(6.0, 6.0), (2.0, 2.0)], CompletenessCalendar.Of(channel, Berlin).Days.Select(d => (d.ReadHours, d.Kwh)));
    }

    [Fact]
    public void Each_stretch_says_where_how_long_how_much_and_what_was_done()
    {
        var quality = ChannelQuality.Of(Hours(new LocalDate(2024, 6, 1), 72, i => i is >= 30 and < 36 ? Quality.Missing : i is 40 or 41 or 50 ? Quality.Estimated : Quality.Good));
        Assert.Equal([(Quality.Missing, 6, 0.0), (Quality.Estimated, 2, 1.0), (Quality.Estimated, 1, 0.5)], quality.Events.Select(e => (e.What, e.Intervals, e.Kwh)));
        Assert.Equal(Duration.FromHours(2), quality.Events[1].Length);
        Assert.All(quality.Events, e => Assert.NotEmpty(e.Done));
    }
}
