using System.Globalization;
using System.Text;
using NodaTime;

namespace SolarEconomics.Tests;

public sealed class LostClockTests : IDisposable
{
    private static readonly Site Mill = Site.At("Test mill", 53.2, -9.1, "Europe/Dublin", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    /// <summary>Ten days of half hours of a clear roof whose middle is solar noon, from a day on, as a clock that is ahead by some time writes them.</summary>
    private static IEnumerable<(Instant At, double Kwh)> Roof(LocalDate first, int days, Duration ahead)
    {
        for (var d = 0; d < days; d++)
        {
            var noon = Sun.On(first.PlusDays(d), Mill).Noon;
            var midnight = first.PlusDays(d).AtStartOfDayInZone(DateTimeZone.Utc).ToInstant();
            for (var i = 0; i < 48; i++)
            {
                var at = midnight + Duration.FromMinutes(30 * i);
                var hours = (at + Duration.FromMinutes(15) - noon).TotalHours;
                yield return (at + ahead, Math.Max(0, Math.Cos(hours / 8 * Math.PI / 2)));
            }
        }
    }

    [Fact]
    public void Rows_of_a_lost_clock_are_reported_and_can_be_put_on_solar_noon()
    {
        var lost = Instant.FromUtc(2000, 1, 1, 0, 0) - Instant.FromUtc(2024, 5, 11, 5, 30);
        var text = new StringBuilder("time,generation (kWh)\n");
        foreach (var (at, kwh) in Roof(new LocalDate(2024, 5, 1), 10, Duration.Zero)) text.Append(CultureInfo.InvariantCulture, $"{at},{kwh:R}\n");
        foreach (var (at, kwh) in Roof(new LocalDate(2024, 5, 11), 10, lost).Skip(11)) text.Append(CultureInfo.InvariantCulture, $"{at},{kwh:R}\n");
        foreach (var (at, kwh) in Roof(new LocalDate(2024, 5, 22), 10, Duration.Zero)) text.Append(CultureInfo.InvariantCulture, $"{at},{kwh:R}\n");
        var readings = Readings.Load(_files.Write("meter.csv", text.ToString()), Mill);
        var problem = Assert.Single(readings.Problems, p => p.Severity == Severity.Doubtful);
        Assert.StartsWith("469 rows at the time that a device without its clock shows, beside rows from 2024 on", problem.Found, StringComparison.Ordinal);

        var realigned = readings.Channels[0].RealignedOnSolarNoon(Instant.FromUtc(2001, 1, 1, 0, 0), new LocalDate(2024, 5, 11), Mill);
        Assert.Equal(469, realigned.Intervals);
        Assert.InRange((realigned.ShiftedBy + lost).TotalMinutes, -2, 2);
        Assert.Equal(readings.Channels[0].Total.Kwh, realigned.Channel.Total.Kwh, 9);
        Assert.Equal(Instant.FromUtc(2024, 5, 1, 0, 0), realigned.Channel.Start);
    }

    [Fact]
    public void A_record_of_the_year_2000_is_no_lost_clock() =>
        Assert.Empty(Readings.Load(_files.Write("meter.csv", "time,import (kWh)\n2000-06-01 00:00,1\n2000-06-01 01:00,2\n2000-06-01 02:00,1\n"), Mill).Problems);

    [Fact]
    public void A_first_day_on_which_other_readings_lie_is_refused()
    {
        var starts = Enumerable.Range(0, 6).Select(i => Instant.FromUtc(i < 3 ? 2000 : 2024, 5, 1, 10 + (i % 3), 0)).ToArray();
        var channel = new Channel("roof", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [1, 2, 1, 1, 2, 1], new Quality[6]);
        Assert.Throws<InvalidOperationException>(() => channel.RealignedOnSolarNoon(Instant.FromUtc(2001, 1, 1, 0, 0), new LocalDate(2024, 5, 1), Mill));
    }
}
