using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Public holidays by country and region, against the governments' lists as known from memory.</summary>
public sealed class HolidayTests
{
    [Theory]
    [InlineData("IE", null, "2024-02-05", true)]  // St Brigid's day, first Monday of February
    [InlineData("IE", null, "2024-02-06", false)]
    [InlineData("AU", "VIC", "2024-11-05", true)] // Melbourne Cup day, in Victoria only
    [InlineData("AU", "NSW", "2024-11-05", false)]
    [InlineData("DE", "BY", "2024-01-06", true)]  // Epiphany, in Bavaria and not in Berlin
    [InlineData("DE", "BE", "2024-01-06", false)]
    [InlineData("us", null, "2024-07-04", true)]
    public void A_holiday_is_known_by_country_and_region(string country, string? region, string day, bool expected) =>
        Assert.Equal(expected, HolidayList.OfCountry(country, region).Contains(NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value));

    // Organisation of Working Time Act 1997 (Ireland), second schedule, paragraph 1: the days themselves, not the Monday after one that falls on a
    // Sunday (the act of 1973 moved it; that of 1997 does not). S.I. 50/2022: 18 March 2022 once; from 2023 the first Monday of February, or 1 February on a Friday.
    [Theory]
    [InlineData("2024-03-17", true)]  // St Patrick's day, a Sunday
    [InlineData("2024-03-18", false)] // the Monday after it
    [InlineData("2013-03-18", false)]
    [InlineData("2021-12-27", false)] // after a Christmas on Saturday and Sunday
    [InlineData("2023-01-02", false)] // after a New Year's day on a Sunday
    [InlineData("2022-03-18", true)]
    [InlineData("2022-02-07", false)]
    [InlineData("2030-02-01", true)]
    [InlineData("2030-02-04", false)]
    public void An_Irish_holiday_on_a_weekend_is_not_moved(string day, bool expected) =>
        Assert.Equal(expected, HolidayList.OfCountry("IE").Contains(NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value));

    [Fact]
    public void An_unknown_country_or_region_names_the_nearest()
    {
        Assert.Contains("Found country \"UK\"", Assert.Throws<UnknownNameException>(() => HolidayList.OfCountry("UK")).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found region \"VICT\", expected one of AU such as VIC,", Assert.Throws<UnknownNameException>(() => HolidayList.OfCountry("AU", "VICT")).Message, StringComparison.Ordinal);
        Assert.Contains("expected none", Assert.Throws<UnknownNameException>(() => HolidayList.OfCountry("IE", "Cork")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_own_day_is_added_to_a_country_s() =>
        Assert.True(HolidayList.OfCountry("IE").With(new LocalDate(2024, 3, 4)).Contains(new LocalDate(2024, 3, 4)));
}
