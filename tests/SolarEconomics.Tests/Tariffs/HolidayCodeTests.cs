using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Every country by its code, with one day by which it cannot be taken for another; days by the countries' own laws, from memory.</summary>
public sealed class HolidayCodeTests
{
    [Theory]
    [InlineData("AT", 2023, 10, 26)]
    [InlineData("AU", 2024, 1, 26)]
    [InlineData("BE", 2023, 7, 21)]
    [InlineData("BR", 2023, 9, 7)]
    [InlineData("CA", 2024, 7, 1)]
    [InlineData("CH", 2024, 8, 1)]
    [InlineData("CZ", 2024, 10, 28)]
    [InlineData("DE", 2024, 10, 3)]
    [InlineData("DK", 2024, 12, 26)]
    [InlineData("EE", 2023, 2, 24)]
    [InlineData("ES", 2023, 10, 12)]
    [InlineData("FR", 2023, 7, 14)]
    [InlineData("GB", 2024, 12, 26)]
    [InlineData("GR", 2024, 3, 25)]
    [InlineData("HR", 2024, 5, 30)]
    [InlineData("HU", 2024, 8, 20)]
    [InlineData("IE", 2025, 3, 17)]
    [InlineData("IT", 2023, 6, 2)]
    [InlineData("JP", 2025, 2, 11)]
    [InlineData("LT", 2024, 2, 16)]
    [InlineData("LU", 2023, 6, 23)]
    [InlineData("LV", 2024, 11, 18)]
    [InlineData("MX", 2024, 9, 16)]
    [InlineData("NL", 2023, 4, 27)]
    [InlineData("NO", 2024, 5, 17)]
    [InlineData("NZ", 2024, 2, 6)]
    [InlineData("PL", 2024, 11, 11)]
    [InlineData("PT", 2024, 6, 10)]
    [InlineData("RO", 2023, 12, 1)]
    [InlineData("RS", 2024, 2, 15)]
    [InlineData("SE", 2024, 6, 6)]
    [InlineData("SI", 2024, 6, 25)]
    [InlineData("SK", 2023, 8, 29)]
    [InlineData("TR", 2024, 10, 29)]
    [InlineData("US", 2024, 7, 4)]
    [InlineData("ZA", 2023, 4, 27)]
    public void A_country_has_its_own_day(string country, int year, int month, int day)
    {
        Assert.True(HolidayList.OfCountry(country).Contains(new LocalDate(year, month, day)));
        Assert.True(HolidayList.OfCountry(country.ToLowerInvariant()).Contains(new LocalDate(year, month, day)));
    }

    [Theory]
    [InlineData("CA", "AB BC MB NB NS NT NU ON PE QC SK YT")]
    [InlineData("AU", "ACT NSW NT QLD SA TAS VIC WA")]
    [InlineData("IE", "")]
    public void A_country_has_its_regions(string country, string regions) =>
        Assert.Equal(regions.Split(' ', StringSplitOptions.RemoveEmptyEntries), HolidayCountries.RegionsOf(country).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("AU", "All")]
    [InlineData("CH", "OnlyOfficial")]
    [InlineData("CH", "ALL")]
    [InlineData("DE", "ALL")]
    [InlineData("FR", "OnlyOfficial")]
    [InlineData("FR", "ALL")]
    [InlineData("FR", "Guadeloupe")]
    [InlineData("FR", "Guyane")]
    [InlineData("FR", "Martinique")]
    [InlineData("FR", "SaintMartin")]
    [InlineData("NZ", "ALL")]
    [InlineData("PT", "OnlyOfficial")]
    [InlineData("CA", "NL")]
    public void What_stands_for_a_whole_country_or_cannot_be_listed_is_no_region(string country, string region) =>
        Assert.Throws<UnknownNameException>(() => HolidayList.OfCountry(country, region));
}
