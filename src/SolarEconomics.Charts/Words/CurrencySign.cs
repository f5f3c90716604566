using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>How a currency is written beside a number. Signs that several currencies share are not used alone.</summary>
internal static class CurrencySign
{
    internal static string Of(Currency currency) => currency.Code switch
    {
        "EUR" => "€",
        "GBP" => "£",
        "INR" => "₹",
        "JPY" => "¥",
        "USD" => "US$",
        "AUD" => "A$",
        "CAD" => "C$",
        "NZD" => "NZ$",
        var code => code,
    };

    /// <summary>Text before and after a number; the culture says on which side.</summary>
    internal static (string Before, string After) Around(Currency currency, CultureInfo culture)
    {
        var sign = Of(currency);
        // A no-break space, as a line must not end between a number and its unit.
        var isCode = char.IsLetter(sign[^1]);
        return culture.NumberFormat.CurrencyPositivePattern switch
        {
            0 => (isCode ? sign + "\u00a0" : sign, ""),
            2 => (sign + "\u00a0", ""),
            1 => ("", isCode ? "\u00a0" + sign : sign),
            _ => ("", "\u00a0" + sign),
        };
    }
}
