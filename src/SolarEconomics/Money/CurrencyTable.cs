using System.Collections.Frozen;

namespace SolarEconomics;

/// <summary>Codes of ISO 4217 with the digits of the smallest coin. Source: money-1.</summary>
internal static class CurrencyTable
{
    private const string NoDigits =
        "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF ";

    private const string TwoDigits =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF " +
        "CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD " +
        "HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK " +
        "MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD " +
        "RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS " +
        "UAH USD UYU UZS VED VES WST XCD YER ZAR ZMW ZWG ";

    private const string ThreeDigits =
        "BHD IQD JOD KWD LYD OMR TND ";

    internal static readonly FrozenDictionary<string, int> MinorDigits =
        Split(NoDigits, 0).Concat(Split(TwoDigits, 2)).Concat(Split(ThreeDigits, 3))
            .ToFrozenDictionary(StringComparer.Ordinal);

    private static IEnumerable<KeyValuePair<string, int>> Split(string codes, int digits) =>
        codes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(c => KeyValuePair.Create(c, digits));
}
