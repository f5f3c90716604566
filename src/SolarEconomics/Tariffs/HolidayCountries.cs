using PublicHoliday;

namespace SolarEconomics;

/// <summary>The countries whose public holidays are known, by ISO 3166 code, with their regions.</summary>
internal static class HolidayCountries
{
    // Left out are regions whose holidays the package cannot list in years in which two of them fall on one day: CA NL and four regions of FR.
    private static readonly Dictionary<string, (string[] Regions, Func<string?, PublicHolidayBase> Make)> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["AT"] = ([], _ => new AustriaPublicHoliday()),
        ["AU"] = (Names<AustraliaPublicHoliday.States>("All"), region => new AustraliaPublicHoliday { State = Parse(region, AustraliaPublicHoliday.States.All) }),
        ["BE"] = ([], _ => new BelgiumPublicHoliday()),
        ["BR"] = ([], _ => new BrazilPublicHoliday()),
        ["CA"] = (["AB", "BC", "MB", "NB", "NS", "NT", "NU", "ON", "PE", "QC", "SK", "YT"], region => new CanadaPublicHoliday(region?.ToUpperInvariant())),
        ["CH"] = (Names<SwitzerlandPublicHoliday.Cantons>("OnlyOfficial", "ALL"), region => new SwitzerlandPublicHoliday { Canton = Parse(region, SwitzerlandPublicHoliday.Cantons.OnlyOfficial) }),
        ["CZ"] = ([], _ => new CzechRepublicPublicHoliday()),
        ["DE"] = (Names<GermanPublicHoliday.States>("ALL"), region => new GermanPublicHoliday { State = Parse(region, GermanPublicHoliday.States.ALL) }),
        ["DK"] = ([], _ => new DenmarkPublicHoliday()),
        ["EE"] = ([], _ => new EstoniaPublicHoliday()),
        ["ES"] = ([], _ => new SpainPublicHoliday()),
        ["FR"] = (Names<FrancePublicHoliday.Regions>("OnlyOfficial", "ALL", "Guadeloupe", "Guyane", "Martinique", "SaintMartin"), region => new FrancePublicHoliday { Region = Parse(region, FrancePublicHoliday.Regions.OnlyOfficial) }),
        ["GB"] = (Names<UKBankHoliday.UkCountries>(), region => new UKBankHoliday { UkCountry = Parse(region, UKBankHoliday.UkCountries.England) }),
        ["GR"] = ([], _ => new GreecePublicHoliday()),
        ["HR"] = ([], _ => new CroatiaPublicHoliday()),
        ["HU"] = ([], _ => new HungaryPublicHoliday()),
        ["IE"] = ([], _ => new IrelandPublicHoliday()),
        ["IT"] = ([], _ => new ItalyPublicHoliday()),
        ["JP"] = ([], _ => new JapanPublicHoliday()),
        ["LT"] = ([], _ => new LithuaniaPublicHoliday()),
        ["LU"] = ([], _ => new LuxembourgPublicHoliday()),
        ["LV"] = ([], _ => new LatviaPublicHoliday()),
        ["MX"] = ([], _ => new MexicoPublicHoliday()),
        ["NL"] = ([], _ => new DutchPublicHoliday()),
        ["NO"] = ([], _ => new NorwayPublicHoliday()),
        ["NZ"] = (Names<NewZealandPublicHoliday.ProvincialDistricts>("ALL"), region => new NewZealandPublicHoliday { ProvincialDistrict = Parse(region, NewZealandPublicHoliday.ProvincialDistricts.ALL) }),
        ["PL"] = ([], _ => new PolandPublicHoliday()),
        ["PT"] = (Names<PortugalPublicHoliday.Regions>("OnlyOfficial"), region => new PortugalPublicHoliday { Region = Parse(region, PortugalPublicHoliday.Regions.OnlyOfficial) }),
        ["RO"] = ([], _ => new RomanianPublicHoliday()),
        ["RS"] = ([], _ => new SerbianPublicHoliday()),
        ["SE"] = ([], _ => new SwedenPublicHoliday()),
        ["SI"] = ([], _ => new SloveniaPublicHoliday()),
        ["SK"] = ([], _ => new SlovakiaPublicHoliday()),
        ["TR"] = ([], _ => new TurkeyPublicHoliday()),
        ["US"] = ([], _ => new USAPublicHoliday()),
        ["ZA"] = ([], _ => new SouthAfricaPublicHoliday()),
    };

    /// <exception cref="UnknownNameException">No such country, or no such region of it; the message names the nearest.</exception>
    internal static PublicHolidayBase Of(string country, string? region)
    {
        if (!Known.TryGetValue(country, out var known)) throw Throw.UnknownHolidayCountry(country, [.. Known.Keys]);
        if (region is not null && !known.Regions.Contains(region, StringComparer.OrdinalIgnoreCase)) throw Throw.UnknownHolidayRegion(country, region, known.Regions);
        return known.Make(region);
    }

    /// <summary>The holidays of a year. Of Switzerland's they are taken from their descriptions, as two on one day (1 May 2008) are too many for the plain list.</summary>
    internal static IEnumerable<DateTime> In(int year, PublicHolidayBase calendar) => calendar is SwitzerlandPublicHoliday
        ? calendar.PublicHolidaysInformation(year).Select(h => h.ObservedDate)
        : calendar.PublicHolidays(year);

    /// <summary>The regions of a country that are known.</summary>
    internal static IReadOnlyList<string> RegionsOf(string country) => Known[country].Regions;

    internal static IEnumerable<string> Countries => Known.Keys;

    private static string[] Names<T>(params string[] wholeCountry) where T : struct, Enum => [.. Enum.GetNames<T>().Except(wholeCountry, StringComparer.Ordinal)];

    private static T Parse<T>(string? region, T wholeCountry) where T : struct, Enum => region is null ? wholeCountry : Enum.Parse<T>(region, ignoreCase: true);
}
