using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Readings laid on a billing grid. By hand, and against a naive loop over seconds on random readings.</summary>
public sealed class BillColumnTests
{
    private static readonly DateTimeZone s_dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    private static readonly DateTimeZone s_winter = DateTimeZone.ForOffset(Offset.Zero);
    private static readonly Instant s_start = Instant.FromUtc(2024, 1, 10, 0, 0);

    /// <summary>Dublin is an hour ahead in June: its own midnight is 23:00 UTC, that of its winter time 00:00 UTC.</summary>
    [Theory]
    [InlineData("2024-05-31T23:00", "2024-06-30T23:00", false)]
    [InlineData("2024-06-01T00:00", "2024-07-01T00:00", true)]
    [InlineData("2024-06-01T00:00", "2024-06-30T13:00", false)]
    [InlineData("2024-06-01T13:00", "2024-07-01T00:00", false)]
    [InlineData("2024-05-31T23:00", "2024-07-01T00:00", false)]
    [InlineData("2024-06-01T00:00", "2024-06-30T23:00", false)]
    [InlineData("2024-01-01T00:00", "2024-06-30T23:00", false)]
    [InlineData("2024-01-01T00:00", "2024-07-01T00:00", true)]
    public void Days_follow_winter_time_where_only_its_midnights_fit(string start, string end, bool winter) =>
        Assert.Equal(winter ? s_winter : s_dublin, BillColumn.MeterClock(At(start), At(end), s_dublin));

    [Theory]
    [InlineData(3600, 3600)]
    [InlineData(7200, 3600)]
    [InlineData(1800, 1800)]
    [InlineData(300, 300)]
    [InlineData(1, 1)]
    [InlineData(420, 60)] // does not divide the hour
    [InlineData(0.5, 60)]
    [InlineData(1.5, 60)] // no whole seconds
    public void The_grid_is_as_fine_as_the_finest_reading_that_divides_the_hour(double seconds, double step)
    {
        Channel[] channels = [Of("hours", (0, 3600, 1, false), (3600, 3600, 1, false)), Of("fine", (0, 7200, 1, false), (7200, seconds, 1, false), (9000, 5400, 1, false))];
        var grid = BillColumn.Grid(channels, new LocalDate(2024, 1, 10), new LocalDate(2024, 1, 12), DateTimeZone.Utc);
        Assert.Equal((s_start, Duration.FromSeconds(step), (int)Math.Ceiling(2 * 86_400 / step)), (grid.Start, grid.Step, grid.Count));
    }

    [Fact]
    public void Days_of_a_change_of_the_clocks_have_23_and_25_hours()
    {
        Assert.Equal(23, BillColumn.Grid([], new LocalDate(2024, 3, 31), new LocalDate(2024, 4, 1), s_dublin).Count);
        Assert.Equal(25, BillColumn.Grid([], new LocalDate(2024, 10, 27), new LocalDate(2024, 10, 28), s_dublin).Count);
    }

    /// <summary>Readings of any length at any second, before, in and after the grid, some missing; a reading's energy is spread evenly over its seconds.</summary>
    [Fact]
    public void Energy_and_cover_agree_with_a_naive_loop_over_seconds() =>
        Gen.Select(Gen.Int[0, 400], Gen.Int[1, 900], Gen.Double[0, 5], Gen.Int[0, 3]).Array[0, 12].Select(Gen.Int[-900, 300]).Sample((parts, first) =>
        {
            var readings = new List<(double From, double Seconds, double Kwh, bool Missing)>();
            var at = first;
            foreach (var (pause, seconds, amount, quality) in parts)
            {
                readings.Add((at + pause, seconds, amount, quality == 0));
                at += pause + seconds;
            }
            var grid = new IntervalGrid(s_start, Duration.FromSeconds(60), 20);
            var column = new BillColumn(grid, [Of("channel", [.. readings])], DateTimeZone.Utc);
            var kwh = column.Kwh();
            var (wanted, covered) = (new double[20], 0);
            foreach (var reading in readings.Where(r => !r.Missing))
                for (var second = (int)reading.From; second < (int)(reading.From + reading.Seconds); second++)
                    if (second is >= 0 and < 1200) (wanted[second / 60], covered) = (wanted[second / 60] + (reading.Kwh / reading.Seconds), covered + 1);
            for (var i = 0; i < 20; i++) Assert.Equal(wanted[i], kwh[i], 1e-9);
            Assert.Equal(covered / 1200.0, BillColumn.CoveredShare(column), 1e-9);
        }, iter: 500);

    [Fact]
    public void A_total_of_several_days_gives_each_the_same_a_day_of_23_hours_too()
    {
        // 30 March to 1 April in Dublin; the 31st has 23 hours. 9 kWh: 3 a day.
        var (start, end) = (new LocalDate(2024, 3, 30).AtStartOfDayInZone(s_dublin).ToInstant(), new LocalDate(2024, 4, 2).AtStartOfDayInZone(s_dublin).ToInstant());
        var grid = new IntervalGrid(start, Duration.FromHours(1), 71);
        double[] Days(Instant from, Instant until, double kwh)
        {
            var column = new BillColumn(grid, [new Channel("days", FlowKind.Import, [from], [until], [kwh], new Quality[1])], s_dublin);
            return [.. new[] { (0, 24), (24, 23), (47, 24) }.Select(d => Math.Round(column.Kwh().Skip(d.Item1).Take(d.Item2).Sum(), 9))];
        }
        Assert.Equal([3, 3, 3], Days(start, end, 9));
        // Not from midnight to midnight: even by the hour. 71 hours less one at either end.
        Assert.Equal([Math.Round(9 * 23 / 70.0, 9), Math.Round(9 * 23 / 70.0, 9), Math.Round(9 * 24 / 70.0, 9)], Days(start + Duration.FromHours(1), end, 9));
        Assert.Equal([Math.Round(9 * 24 / 70.0, 9), Math.Round(9 * 23 / 70.0, 9), Math.Round(9 * 23 / 70.0, 9)], Days(start, end - Duration.FromHours(1), 9));
    }

    [Fact]
    public void Only_what_every_channel_covers_is_covered_and_a_sliver_is_rounding()
    {
        var grid = new IntervalGrid(s_start, Duration.FromHours(1), 4);
        BillColumn Column(params Channel[] channels) => new(grid, channels, DateTimeZone.Utc);
        var (first, last) = (Of("a", (0, 10_800, 1, false)), Of("b", (3600, 10_800, 1, false)));
        Assert.Equal([0.75, 0.75, 1.0, 0.5, 0.5], new[] { BillColumn.CoveredShare(Column(first)), BillColumn.CoveredShare(Column(last)), BillColumn.CoveredShare(Column()),
            BillColumn.CoveredShare(Column(first, last)), BillColumn.CoveredShare(Column(first), Column(), Column(last)) });
        // Readings that overlap cover once; thirds of a third do not add up to a whole in the last digit.
        Assert.Equal(0.5, BillColumn.CoveredShare(Column(Of("c", (0, 7200, 1, false), (0, 7200, 1, false)))));
        Assert.Equal(1.0, BillColumn.CoveredShare(Column(Of("c", [.. Enumerable.Range(0, 36).Select(i => (i * 400.0, 400.0, 0.1, false))]))));
        Assert.Equal(0, BillColumn.CoveredShare(new BillColumn(new IntervalGrid(s_start, Duration.FromHours(1), 0), [], DateTimeZone.Utc)));
    }

    [Fact]
    public void What_a_channel_lacks_takes_its_own_mean_of_that_time_of_day_or_of_all()
    {
        // Three days of eight-hour steps: mornings 2 and 4, middays 6 twice, no evening at all; the third day is half there.
        var grid = new IntervalGrid(s_start, Duration.FromHours(8), 9);
        const double hour = 3600;
        var gaps = Of("gaps", (0, 8 * hour, 2, false), (8 * hour, 8 * hour, 6, false), (24 * hour, 8 * hour, 4, false), (32 * hour, 8 * hour, 6, false), (48 * hour, 4 * hour, 1.5, false));
        var column = new BillColumn(grid, [gaps], DateTimeZone.Utc);
        column.FillByTimeOfDay(DateTimeZone.Utc);
        // Morning: 7.5 kWh in 2.5 steps, 3 a step, so half a step more is 1.5. Evening: all 19.5 kWh in 4.5 steps.
        Assert.Equal([2, 6, 4.333333, 4, 6, 4.333333, 3, 6, 4.333333], column.Kwh().Select(k => Math.Round(k, 6)));
        // A second channel that lacks nothing keeps its own: its energy is not taken for the first one's.
        var both = new BillColumn(grid, [gaps, Of("whole", (0, 72 * hour, 90, false))], DateTimeZone.Utc);
        both.FillByTimeOfDay(DateTimeZone.Utc);
        Assert.Equal([12, 16, 14.333333, 14, 16, 14.333333, 13, 16, 14.333333], both.Kwh().Select(k => Math.Round(k, 6)));
    }

    private static Instant At(string text) => NodaTime.Text.InstantPattern.General.Parse(text + ":00Z").Value;

    /// <summary>Readings by seconds after the grid's start.</summary>
    private static Channel Of(string name, params (double From, double Seconds, double Kwh, bool Missing)[] readings) => new(name, FlowKind.Import,
        [.. readings.Select(r => s_start + Duration.FromSeconds(r.From))], [.. readings.Select(r => s_start + Duration.FromSeconds(r.From + r.Seconds))],
        [.. readings.Select(r => r.Kwh)], [.. readings.Select(r => r.Missing ? Quality.Missing : default)]);
}
