using System.Globalization;
using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Numbers as people read them: a sign before the amount, groups of three, the currency's own sign.</summary>
internal static class PeopleNumber
{
    private const string Minus = "\u2212";

    /// <summary>Whole units from 100 on, the currency's coins below: <c>−€3,210</c>, <c>€4.13</c>, <c>€0</c>.</summary>
    internal static string Money(Money money, CultureInfo culture) => Signed(money, culture, plus: "");

    /// <summary>As <see cref="Money"/>, with the sign shown on both sides of zero: <c>+€520</c>.</summary>
    internal static string Change(Money money, CultureInfo culture) => Signed(money, culture, plus: "+");

    internal static string Kwh(double kwh, CultureInfo culture) => Number(kwh, kwh is > -10 and < 10 ? 1 : 0, culture) + " kWh";

    internal static string Years(double years, CultureInfo culture) => Number(years, 1, culture) + " years";

    internal static string Percent(double share, CultureInfo culture) => Number(share * 100, 0, culture) + " %";

    internal static string Date(LocalDate date, CultureInfo culture) => date.ToString("d MMM uuuu", culture);

    internal static string Month(YearMonth month, CultureInfo culture) => month.OnDayOfMonth(1).ToString("MMM uuuu", culture);

    internal static string Number(double value, int digits, CultureInfo culture)
    {
        var rounded = Math.Round((decimal)value, digits, MidpointRounding.AwayFromZero);
        return (rounded < 0 ? Minus : "") + Math.Abs(rounded).ToString("N" + digits.ToString(CultureInfo.InvariantCulture), culture);
    }

    private static string Signed(Money money, CultureInfo culture, string plus)
    {
        var digits = money.Amount == 0 || Math.Abs(money.Amount) >= 100 ? 0 : money.Currency.MinorDigits;
        var rounded = Math.Round(money.Amount, digits, MidpointRounding.AwayFromZero);
        var number = Math.Abs(rounded).ToString("N" + digits.ToString(CultureInfo.InvariantCulture), culture);
        var (before, after) = CurrencySign.Around(money.Currency, culture);
        return (rounded < 0 ? Minus : rounded > 0 ? plus : "") + before + number + after;
    }
}
