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
