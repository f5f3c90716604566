using System.Globalization;
using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Numbers as people read them: a sign before the amount, groups of three, unit behind.</summary>
internal static class PeopleNumber
{
    internal const string Minus = "\u2212";

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
}
