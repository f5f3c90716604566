using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Writes money, energy, years and dates for people, in the reader's culture. Values are rounded here and nowhere else.</summary>
internal static class Wording
{
    /// <summary>Whole units of the currency: <c>€1,234</c>; a minus sign, not a hyphen.</summary>
    internal static string Whole(Money money, CultureInfo culture) => Amount(money, "#,0", culture);

    /// <summary>With the smallest coin: <c>€1,234.50</c>.</summary>
    internal static string Exact(Money money, CultureInfo culture) => Amount(money, CoinFormat(money.Currency), culture);

    /// <summary>The number alone, with the digits of the smallest coin, for tables that name their currency: <c>−1,234.50</c>.</summary>
    internal static string Plain(Money money, CultureInfo culture) => Number(money.Amount, CoinFormat(money.Currency), culture, "", "");

    /// <summary>A price: <c>€0.3124</c>.</summary>
    internal static string Price(Money money, CultureInfo culture) => Amount(money, "#,0.00##", culture);

    /// <summary>With the sign always shown: <c>+€120</c>, <c>−€80</c>.</summary>
    internal static string Signed(Money money, CultureInfo culture) => (money.Amount > 0 ? "+" : "") + Whole(money, culture);

    internal static string Kwh(double kwh, CultureInfo culture) => Minus(kwh.ToString("#,0", culture)) + " kWh";

    internal static string Years(double years, CultureInfo culture) => Minus(years.ToString("0.0", culture)) + " years";

    /// <summary>A number with what it counts: <c>1 year</c>, <c>25 years</c>.</summary>
    internal static string Count(int number, string noun, CultureInfo culture) =>
        Minus(number.ToString("#,0", culture)) + " " + noun + (number == 1 ? "" : "s");

    /// <summary>The same for a measured amount, one as it is written: <c>1 hour</c>, <c>1.5 hours</c>.</summary>
    internal static string Count(double number, string format, string noun, CultureInfo culture)
    {
        var written = Minus(number.ToString(format, culture));
        return written + " " + noun + (written == "1" ? "" : "s");
    }

    /// <summary>The same for messages, which are in one language: <c>1 year</c>, <c>25 years</c>.</summary>
    internal static string CountInMessage(int number, string noun) => Count(number, noun, CultureInfo.InvariantCulture);

    internal static string Percent(double fraction, CultureInfo culture) => Minus((fraction * 100).ToString("0.0", culture)) + " %";

    internal static string Day(LocalDate day, CultureInfo culture) => day.ToString("d MMM uuuu", culture);

    /// <summary>A half-open span, said with its last day: <c>1 Mar 2022 to 28 Feb 2025</c>.</summary>
    internal static string Days(DateSpan span, CultureInfo culture) => $"{Day(span.Start, culture)} to {Day(span.End.PlusDays(-1), culture)}";

    /// <summary>With a capital at the start of a sentence.</summary>
    internal static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string CoinFormat(Currency currency) => currency.MinorDigits == 0 ? "#,0" : "#,0." + new string('0', currency.MinorDigits);

    private static string Amount(Money money, string format, CultureInfo culture)
    {
        var (before, after) = money.Currency.SignAround(culture);
        return Number(money.Amount, format, culture, before, after);
    }

    private static string Number(decimal amount, string format, CultureInfo culture, string before, string after)
    {
        var digits = Math.Abs(amount).ToString(format, culture);
        // An amount that rounds to nothing carries no sign.
        var isNegative = amount < 0 && digits.Any(c => c is >= '1' and <= '9');
        return (isNegative ? "−" : "") + before + digits + after;
    }

    internal static string Minus(string number) => number.Replace('-', '−');
}
