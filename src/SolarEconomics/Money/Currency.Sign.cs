using System.Globalization;

namespace SolarEconomics;

/// <content>How the currency is written beside a number.</content>
public readonly partial record struct Currency
{
    /// <summary>The sign that people write: <c>€</c>, <c>US$</c>; the code for all others. Empty without a code.</summary>
    public string Sign => Code switch
    {
        "EUR" => "€",
        "GBP" => "£",
        "INR" => "₹",
        "JPY" => "¥",
        "USD" => "US$",
        "AUD" => "A$",
        "CAD" => "C$",
        "NZD" => "NZ$",
        "ZAR" => "R",
        var code => code ?? "",
    };

    /// <summary>The sign as it stands before or after a number, with the blank between them: <c>("€", "")</c> in Ireland, <c>("", " €")</c> in Germany.</summary>
    /// <param name="culture">Whose way of writing; it says on which side the sign stands.</param>
    /// <returns>One of the two is empty, both where there is no code. The blank is one at which no line ends.</returns>
    public (string Before, string After) SignAround(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        if (Sign.Length == 0) return ("", "");
        var isWord = char.IsLetter(Sign[^1]);
        return culture.NumberFormat.CurrencyPositivePattern switch
        {
            0 => (isWord ? Sign + "\u00a0" : Sign, ""),
            2 => (Sign + "\u00a0", ""),
            1 => ("", isWord ? "\u00a0" + Sign : Sign),
            _ => ("", "\u00a0" + Sign),
        };
    }
}
