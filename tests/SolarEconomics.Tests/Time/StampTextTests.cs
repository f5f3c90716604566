using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

public sealed class StampTextTests
{
    [Theory]
    [InlineData("2024-03-01 09:05", "2024-03-01T09:05:00.000")]
    [InlineData("2024-03-01T09:05:07", "2024-03-01T09:05:07.000")]
    [InlineData("2024-03-01T09:05:07.25", "2024-03-01T09:05:07.250")]
    [InlineData("2024/3/1 9:05", "2024-03-01T09:05:00.000")]
    [InlineData("20240301 0905", "2024-03-01T09:05:00.000")]
    [InlineData("01.03.2024 09:05", "2024-03-01T09:05:00.000")]
    [InlineData("01/03/2024 9:05 PM", "2024-03-01T21:05:00.000")]
    [InlineData("1 Mar 2024 12:05 am", "2024-03-01T00:05:00.000")]
    [InlineData("01-March-2024 24:00", "2024-03-02T00:00:00.000")]
    [InlineData("2024-03-01", "2024-03-01T00:00:00.000")]
    [InlineData("2024-03", "2024-03-01T00:00:00.000")]
    [InlineData("202403010905", "2024-03-01T09:05:00.000")]
    [InlineData("20240301090507", "2024-03-01T09:05:07.000")]
    [InlineData("2024-03-01_09:05", "2024-03-01T09:05:00.000")]
    [InlineData("1.3.2024 9.05", "2024-03-01T09:05:00.000")]
    [InlineData("1/3/2024 09h05", "2024-03-01T09:05:00.000")]
    [InlineData("01/03/2024 9:05 p.m.", "2024-03-01T21:05:00.000")]
    [InlineData("2024-061 09:05", "2024-03-01T09:05:00.000")]
    [InlineData("2024-W09-5", "2024-03-01T00:00:00.000")]
    [InlineData("2024W095", "2024-03-01T00:00:00.000")]
    [InlineData("2020-W53", "2020-12-28T00:00:00.000")]
    [InlineData("1. März 2024 09:05", "2024-03-01T09:05:00.000")]
    [InlineData("15. Okt. 2024", "2024-10-15T00:00:00.000")]
    [InlineData("1er août 2024", "2024-08-01T00:00:00.000")]
    [InlineData("1 de enero de 2024", "2024-01-01T00:00:00.000")]
    [InlineData("3 paź 2024", "2024-10-03T00:00:00.000")]
    [InlineData("March 1, 2024 9:05 am", "2024-03-01T09:05:00.000")]
    [InlineData("Fri, 1 Mar 2024 09:05", "2024-03-01T09:05:00.000")]
    [InlineData("mar. 5 mars 2024", "2024-03-05T00:00:00.000")]
    [InlineData("Fr 01.03.2024 09:05", "2024-03-01T09:05:00.000")]
    [InlineData("2024-Mar-01", "2024-03-01T00:00:00.000")]
    [InlineData("01MAR2024:09:05:07", "2024-03-01T09:05:07.000")]
    [InlineData("Mai 2024", "2024-05-01T00:00:00.000")]
    public void A_time_is_read(string text, string local)
    {
        Assert.True(StampText.TryRead(text, DateOrder.DayMonthYear, out var stamp));
        Assert.Equal(local, StampClock.LocalOf(stamp.LocalMs).ToString("uuuu-MM-dd'T'HH:mm:ss.fff", CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("2024-03-01T09:05Z", 0)]
    [InlineData("2024-03-01T09:05+02:00", 120)]
    [InlineData("2024-03-01 09:05 -0330", -210)]
    [InlineData("2024-03-01 09:05+10", 600)]
    [InlineData("2024-03-01 09:05 UTC", 0)]
    [InlineData("2024-03-01 09:05 GMT+1", 60)]
    [InlineData("2024-03-01 09:05 CEST", 120)]
    [InlineData("2024-03-01T09:05+01:00[Europe/Berlin]", 60)]
    [InlineData("2024-03-01T09:05Z[UTC]", 0)]
    public void An_offset_is_read(string text, int minutes)
    {
        Assert.True(StampText.TryRead(text, DateOrder.YearMonthDay, out var stamp));
        Assert.Equal(minutes, stamp.OffsetMinutes);
    }

    [Theory]
    [InlineData("2024-02-30 00:00")]
    [InlineData("2024-13-01 00:00")]
    [InlineData("2024-03-01 24:01")]
    [InlineData("2024-03-01 09:60")]
    [InlineData("2024-03-01 09:05 x")]
    [InlineData("1024-03-01 09:05")]
    [InlineData("2024-03-01 13:05 PM")]
    [InlineData("01/03/2024 09:05")]
    [InlineData("12.5")]
    [InlineData("2021-W53")]
    [InlineData("2024-W00")]
    [InlineData("2023-366")]
    [InlineData("5 stone 2024")]
    [InlineData("Roof 1 Mar 2024")]
    [InlineData("1 Mar Apr 2024")]
    [InlineData("2024-03-01 09:05 EST")]
    [InlineData("2024-03-01 09:05Z+02:00")]
    [InlineData("20240301090")]
    [InlineData("")]
    public void What_is_no_time_is_none(string text) => Assert.False(StampText.TryRead(text, DateOrder.YearMonthDay, out _));

    [Fact]
    public void Every_day_of_three_centuries_is_read_as_the_calendar_counts_it()
    {
        for (var day = new LocalDate(1900, 1, 1); day.Year < 2200; day = day.PlusDays(1))
        {
            Assert.True(StampText.TryRead(day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture), DateOrder.YearMonthDay, out var stamp));
            Assert.Equal(Period.DaysBetween(new LocalDate(1970, 1, 1), day), stamp.LocalMs / 86_400_000);
        }
    }

    [Fact]
    public void Every_day_of_three_centuries_is_the_runtimes_day()
    {
        for (var day = new DateTime(1900, 1, 1, 0, 0, 0, DateTimeKind.Utc); day.Year < 2200; day = day.AddDays(1))
        {
            Assert.True(StampText.TryRead(day.ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture), DateOrder.YearMonthDay, out var stamp));
            Assert.Equal((day - DateTime.UnixEpoch).TotalMilliseconds, stamp.LocalMs);
        }
    }

    [Theory]
    [InlineData("2023-02-29 00:00")]
    [InlineData("2024-04-31 00:00")]
    [InlineData("2024-00-10 00:00")]
    [InlineData("2024-13-10 00:00")]
    [InlineData("2024-01-00 00:00")]
    [InlineData("2024-01-01 24:01")]
    [InlineData("2024-01-01 00:60")]
    [InlineData("2024-01-01 00:00:60")]
    [InlineData("2024-01-0x 00:00")]
    [InlineData("2024-01-01 0\u0664:00")]
    public void What_no_clock_shows_is_no_time(string text) => Assert.False(StampText.TryRead(text, DateOrder.YearMonthDay, out _));
}
