using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

public class IntervalGridTests
{
    [Theory]
    [InlineData("Europe/Dublin")]
    [InlineData("Australia/Lord_Howe")]
    [InlineData("America/St_Johns")]
    [InlineData("Pacific/Apia")]
    [InlineData("UTC")]
    public void The_local_day_of_each_interval_is_NodaTimes(string id)
    {
        var zone = DateTimeZoneProviders.Tzdb[id];
        Gen.Int[0, 60_000].Sample(hours =>
        {
            var grid = new IntervalGrid(Instant.FromUtc(1969, 6, 1, 0, 0) + Duration.FromHours(hours * 8L), Duration.FromMinutes(30), 4_000);
            var days = grid.LocalDays(zone);
            for (var i = 0; i < days.Length; i++) Assert.Equal(grid.StartOf(i).InZone(zone).Date, days[i]);
        }, iter: 20);
    }

    [Theory]
    [InlineData(2024, 3, 31, 46)]
    [InlineData(2024, 10, 27, 50)]
    [InlineData(2024, 6, 1, 48)]
    public void A_local_day_in_Dublin_holds_46_48_or_50_half_hours(int year, int month, int day, int halfHours)
    {
        var zone = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
        var date = new LocalDate(year, month, day);
        var grid = new IntervalGrid(zone.AtStartOfDay(date.PlusDays(-1)).ToInstant(), Duration.FromMinutes(30), 200);
        Assert.Equal(halfHours, grid.LocalDays(zone).Count(d => d == date));
    }
}
