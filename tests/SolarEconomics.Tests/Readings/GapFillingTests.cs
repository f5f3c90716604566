using NodaTime;

namespace SolarEconomics.Tests;

public sealed class GapFillingTests
{
    private static readonly Instant Start = Instant.FromUtc(2024, 6, 3, 0, 0);

    /// <summary>Hourly values; null is a missing interval, NaN one that the record left out.</summary>
    private static Channel Hours(params double?[] kwh)
    {
        var kept = kwh.Select((v, i) => (Value: v, Index: i)).Where(v => v.Value is not double.NaN).ToList();
        return new Channel("generation", FlowKind.Generation,
            [.. kept.Select(k => Start + Duration.FromHours(k.Index))], [.. kept.Select(k => Start + Duration.FromHours(k.Index + 1))],
            [.. kept.Select(k => k.Value ?? 0)], [.. kept.Select(k => k.Value is null ? Quality.Missing : Quality.Good)]);
    }

    [Fact]
    public void A_line_between_neighbours_fills_what_is_missing_and_what_was_left_out()
    {
        var filling = Hours(1, null, double.NaN, 4).FillGapsByNeighbours();
        Assert.Equal([1, 2, 3, 4], filling.Channel.Kwh.ToArray());
        Assert.Equal((2, 5.0, 0), (filling.Filled, filling.FilledKwh, filling.Left));
        Assert.Equal([Quality.Good, Quality.Filled, Quality.Filled, Quality.Good], filling.Channel.Quality.ToArray());
    }

    [Fact]
    public void A_gap_longer_than_allowed_or_at_an_edge_is_left_open()
    {
        var filling = Hours(null, 1, null, null, 4).FillGapsByNeighbours(longest: 1);
        Assert.Equal((0, 3, 5.0), (filling.Filled, filling.Left, filling.Channel.Total.Kwh));
    }

    [Fact]
    public void The_same_weekday_and_time_fills_by_the_mean_of_the_weeks_around()
    {
        var kwh = new double?[3 * 168];
        for (var i = 0; i < kwh.Length; i++) kwh[i] = i / 168;
        kwh[168 + 5] = null;
        var filling = Hours(kwh).FillGapsBySameWeekdayAndTime(DateTimeZone.Utc);
        Assert.Equal((1, 1.0), (filling.Filled, filling.FilledKwh));
    }

    [Fact]
    public void Another_channel_fills_scaled_to_the_same_total()
    {
        var filling = Hours(2, null, 6).FillGapsScaledFrom(Hours(1, 2, 3));
        Assert.Equal((1, 4.0), (filling.Filled, filling.FilledKwh));
        Assert.Equal("by \"generation\" times 2", filling.Rule);
    }

    [Fact]
    public void Nothing_in_common_is_one_clear_message() =>
        Assert.StartsWith("Found no time at which both", Assert.Throws<InvalidOperationException>(() => Hours(1, null).FillGapsScaledFrom(Hours(null, 1))).Message);

    [Fact]
    public void A_missing_part_makes_the_longer_interval_missing()
    {
        var longer = Hours(1, 2, 3, null).InStepsOf(Duration.FromHours(2));
        Assert.Equal([3.0, 0], longer.Kwh.ToArray());
        Assert.Equal([Quality.Good, Quality.Missing], longer.Quality.ToArray());
    }
}
