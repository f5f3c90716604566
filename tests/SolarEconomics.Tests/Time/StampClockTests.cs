using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

public sealed class StampClockTests
{
    public static TheoryData<string> TenZones =>
    [
        "Europe/Dublin", "Europe/Berlin", "Australia/Sydney", "Australia/Brisbane", "Australia/Lord_Howe", "America/New_York", "America/St_Johns",
        "Pacific/Apia", "Asia/Kathmandu", "Africa/Casablanca",
    ];

    [Theory, MemberData(nameof(TenZones))]
    public void Rows_in_order_give_back_every_instant_of_the_days_of_change(string id)
    {
        var zone = Zones.Of(id);
        // Every change from 2005 to 2025, by quarter hours of three days around it.
        foreach (var change in zone.GetZoneIntervals(Instant.FromUtc(2005, 1, 1, 0, 0), Instant.FromUtc(2025, 1, 1, 0, 0)).Where(i => i.HasStart).Select(i => i.Start))
        {
            var clock = new StampClock(zone, StampPolicy.ByRowOrder);
            for (var at = change - Duration.FromHours(36); at < change + Duration.FromHours(36); at += Duration.FromMinutes(15))
            {
                var local = LocalMs(at.InZone(zone).LocalDateTime);
                var fate = clock.Resolve(local, 1, out var unixMs);
                Assert.True(fate <= StampFate.Resolved && unixMs == at.ToUnixTimeMilliseconds(), $"{id}: {at} became {Instant.FromUnixTimeMilliseconds(unixMs)} ({fate})");
            }
        }
    }

    [Theory, MemberData(nameof(TenZones))]
    public void A_stamp_without_doubt_is_what_the_zone_says(string id)
    {
        var zone = Zones.Of(id);
        var clock = new StampClock(zone, StampPolicy.ByRowOrder);
        // Naive: ask the zone for each stamp, with no memory.
        Gen.Int[0, 20 * 366 * 1440].Array[1, 50].Sample(minutes =>
        {
            foreach (var minute in minutes)
            {
                var local = new LocalDateTime(2005, 1, 1, 0, 0).PlusMinutes(minute);
                var map = zone.MapLocal(local);
                var fate = clock.Resolve(LocalMs(local), 1, out var unixMs);
                if (map.Count == 1 ? fate != StampFate.Sure || unixMs != map.Single().ToInstant().ToUnixTimeMilliseconds()
                    : map.Count == 0 ? fate != StampFate.Skipped : fate is StampFate.Sure or StampFate.Skipped) return false;
            }
            return true;
        }, iter: 200, threads: 1);
    }

    [Theory]
    [InlineData(RepeatedHour.First, 0)]
    [InlineData(RepeatedHour.Second, 3600)]
    public void A_policy_may_name_the_pass(RepeatedHour policy, int secondsLater)
    {
        var clock = new StampClock(Zones.Of("Europe/Dublin"), new StampPolicy(policy, SkippedHour.Report));
        clock.Resolve(LocalMs(new LocalDateTime(2024, 10, 27, 1, 30)), 1, out var unixMs);
        Assert.Equal(Instant.FromUtc(2024, 10, 27, 0, 30) + Duration.FromSeconds(secondsLater), Instant.FromUnixTimeMilliseconds(unixMs));
    }

    [Theory]
    [InlineData("Australia/Lord_Howe", 2024, 4, 7, 24.5)]
    [InlineData("Australia/Lord_Howe", 2024, 10, 6, 23.5)]
    public void A_change_of_half_an_hour_makes_days_of_half_hours(string id, int year, int month, int day, double hours) =>
        Assert.Equal(hours, LocalDays.LengthOf(new LocalDate(year, month, day), Zones.Of(id)).TotalHours);

    [Theory]
    [InlineData("+10:00", "UTC+10")]
    [InlineData("UTC+10", "UTC+10")]
    [InlineData("-03:30", "UTC-03:30")]
    [InlineData("UTC", "UTC")]
    [InlineData("Europe/Dublin", "Europe/Dublin")]
    public void A_clock_is_found_by_name_or_offset(string text, string id) => Assert.Equal(id, Zones.Of(text).Id);

    [Fact]
    public void An_unknown_clock_is_said_with_the_nearest_names() =>
        Assert.Contains("Europe/Dublin", Assert.Throws<UnknownNameException>(() => Zones.Of("Europe/Dubln")).Message);

    private static long LocalMs(LocalDateTime local) => (local.ToDateTimeUnspecified() - DateTime.UnixEpoch).Ticks / TimeSpan.TicksPerMillisecond;
}
