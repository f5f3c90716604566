using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class WeatherTests
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly double[] Sun = [0.6, 1.2, 2.3, 3.8, 4.9, 5.1, 4.7, 3.9, 2.8, 1.5, 0.8, 0.45]; // invented
    private static readonly double[] Air = [6, 6, 7, 9, 11, 14, 15.5, 15.5, 14, 11, 8, 6.5]; // invented

    [Fact]
    public void A_made_up_year_keeps_each_months_energy_exactly()
    {
        var weather = Weather.FromMonthlyMeans(Place, 2023, Sun, Air, seed: 5);
        var sums = new double[12];
        for (var i = 0; i < weather.Grid.Count; i++) sums[weather.Grid.StartOf(i).InZone(Place.Zone).Month - 1] += weather.GlobalWm2[i] / 1000;
        for (var m = 1; m <= 12; m++) Assert.Equal(Sun[m - 1] * DateTime.DaysInMonth(2023, m), sums[m - 1], 1e-6);
        Assert.Equal(Air.Average(), weather.AirC.ToArray().Average(), 0.3);
    }

    [Fact]
    public void The_same_seed_gives_the_same_year_and_another_seed_another()
    {
        double[] Global(int seed) => Weather.FromMonthlyMeans(Place, 2023, Sun, Air, seed).GlobalWm2.ToArray();
        Assert.Equal(Global(5), Global(5));
        Assert.NotEqual(Global(5), Global(6));
    }

    [Fact]
    public void No_hour_of_a_made_up_year_beats_the_clear_sky()
    {
        var weather = Weather.FromMonthlyMeans(Place, 2024, Sun, Air, seed: 5);
        var clear = Weather.Clear(Place, weather.Grid);
        Assert.Equal(8784, weather.Grid.Count);
        for (var i = 0; i < weather.Grid.Count; i++) Assert.InRange(weather.GlobalWm2[i], 0, clear.GlobalWm2[i]);
    }

    [Fact]
    public void A_months_sum_given_as_a_daily_mean_is_refused_with_the_clear_skys_figure()
    {
        var e = Assert.Throws<ArgumentException>(() => Weather.FromMonthlyMeans(Place, 2023, [.. Sun.Select(s => s * 30)], Air, 1));
        Assert.Contains("in month 1", e.Message, StringComparison.Ordinal);
        Assert.Contains("of a clear sky. Is it MJ", e.Message, StringComparison.Ordinal);
        Assert.Equal("Found 3 means of energy and 12 of air, expected twelve of each, January first.",
            Assert.Throws<ArgumentException>(() => Weather.FromMonthlyMeans(Place, 2023, [1, 2, 3], Air, 1)).Message);
    }

    [Fact]
    public void Gaps_and_impossible_weather_are_named_with_their_time()
    {
        var grid = new IntervalGrid(Instant.FromUtc(2023, 6, 1, 12, 0), Duration.FromHours(1), 2);
        Assert.Equal("Found global NaN at 2023-06-01T13:00:00Z, expected 0 to 2000 (W/m²; cut a night offset at 0 first). Fill or leave out gaps first; NaN is not weather.",
            Assert.Throws<ArgumentException>(() => Weather.OfGlobal(grid, [500, double.NaN], [15, 15], [1, 1], "test")).Message);
        Assert.Equal("Found diffuse 200 W/m² above global 100 W/m² at 2023-06-01T13:00:00Z, expected it at or below. Are the two columns swapped, or is one of them beam?",
            Assert.Throws<ArgumentException>(() => Weather.OfParts(grid, [500, 100], [400, 0], [100, 200], [15, 15], [1, 1], "test")).Message);
        Assert.Equal("Found 1 value of air, expected one per step: 2.",
            Assert.Throws<ArgumentException>(() => Weather.OfGlobal(grid, [500, 100], [15], [1, 1], "test")).Message);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(30, 30)]   // stamps that name the middle or the end of their hour
    [InlineData(-60, -60)] // summer time taken for standard time
    public void A_clock_that_is_off_is_found_by_the_sun(int minutesLate, double expected)
    {
        var right = Weather.Clear(Place, new IntervalGrid(Instant.FromUtc(2023, 4, 1, 0, 0), Duration.FromMinutes(30), 48 * 60));
        var late = new IntervalGrid(right.Grid.Start + Duration.FromMinutes(minutesLate), right.Grid.Step, right.Grid.Count);
        var weather = Weather.OfGlobal(late, right.GlobalWm2.ToArray(), right.AirC.ToArray(), right.WindMs.ToArray(), "test");
        Assert.Equal(expected, weather.ClockOffsetMinutes(Place)!.Value, 3.0);
    }

    [Fact]
    public void A_week_is_too_short_to_tell_the_clock() =>
        Assert.Null(Weather.Clear(Place, new IntervalGrid(Instant.FromUtc(2023, 4, 1, 0, 0), Duration.FromMinutes(30), 48 * 7)).ClockOffsetMinutes(Place));
}
