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

    [Theory]
    [InlineData("AT", "2024-10-26")] // the national day
    [InlineData("BE", "2024-07-21")]
    [InlineData("BR", "2024-09-07")]
    [InlineData("CA", "2024-07-01")]
    [InlineData("CH", "2024-08-01")]
    [InlineData("CZ", "2024-10-28")]
    [InlineData("DK", "2024-05-09")] // Ascension
    [InlineData("EE", "2024-02-24")]
    [InlineData("ES", "2024-10-12")]
    [InlineData("FR", "2024-07-14")]
    [InlineData("GB", "2024-08-26")] // the last Monday of August, in England
    [InlineData("GR", "2024-03-25")]
    [InlineData("HR", "2024-06-22")]
    [InlineData("HU", "2024-08-20")]
    [InlineData("IT", "2024-06-02")]
    [InlineData("JP", "2024-04-29")]
    [InlineData("LT", "2024-02-16")]
    [InlineData("LU", "2024-06-23")]
    [InlineData("LV", "2024-11-18")]
    [InlineData("MX", "2024-09-16")]
    [InlineData("NL", "2024-04-27")]
    [InlineData("NO", "2024-05-17")]
    [InlineData("NZ", "2024-02-06")]
    [InlineData("PL", "2024-11-11")]
    [InlineData("PT", "2024-06-10")]
    [InlineData("RO", "2024-12-01")]
    [InlineData("RS", "2024-02-15")]
    [InlineData("SE", "2024-06-06")]
    [InlineData("SI", "2024-06-25")]
    [InlineData("SK", "2024-08-29")] // the uprising of 1944
    [InlineData("TR", "2024-10-29")]
    [InlineData("ZA", "2024-04-27")]
    public void The_national_day_of_each_country_is_known_and_a_plain_Wednesday_is_no_holiday(string country, string day)
    {
        var holidays = HolidayList.OfCountry(country);
        Assert.True(holidays.Contains(NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value));
        Assert.False(holidays.Contains(new LocalDate(2024, 10, 9)));
    }

    [Theory]
    [InlineData("CA", "QC", "2024-06-24", true)]  // Saint John's day, in Quebec only
    [InlineData("CA", "on", "2024-06-24", false)]
    [InlineData("CH", "GE", "2024-09-05", true)]  // the Genevan fast
    [InlineData("CH", "ZH", "2024-09-05", false)]
    [InlineData("CH", null, "2024-09-05", false)]
    public void A_region_s_own_holiday_holds_in_that_region_only(string country, string? region, string day, bool expected) =>
        Assert.Equal(expected, HolidayList.OfCountry(country, region).Contains(NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value));

    [Fact]
    public void Every_known_region_has_holidays_in_every_year()
    {
        foreach (var country in HolidayCountries.Countries)
            foreach (var region in HolidayCountries.RegionsOf(country))
                Assert.True(HolidayList.OfCountry(country, region).Days.Select(d => d.Year).Distinct().Count() == 61, $"{country} {region}");
        // Ascension fell on the first of May, a holiday too in some cantons.
        Assert.True(HolidayList.OfCountry("CH", "ZH").Contains(new LocalDate(2008, 5, 1)));
    }

    [Fact]
    public void Holidays_of_a_country_are_known_for_the_stated_years_and_no_others()
    {
        var years = HolidayList.OfCountry("IE").Days.Select(d => d.Year).Distinct().Order().ToList();
        Assert.Equal((2000, 2060, 61), (years[0], years[^1], years.Count));
        Assert.Equal((false, true), (HolidayList.None.Any, HolidayList.Of(new LocalDate(2024, 3, 4)).Any));
    }

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
