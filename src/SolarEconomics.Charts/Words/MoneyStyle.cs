using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>Writes the amounts of one chart or table alike: whole units where any of them reaches 100, the currency's coins otherwise.</summary>
internal readonly record struct MoneyStyle(int Digits, CultureInfo Culture)
{
    private const decimal WholeFrom = 100;

    internal static MoneyStyle For(IEnumerable<Money> amounts, CultureInfo culture)
    {
        var all = amounts.ToList();
        var isWhole = all.Exists(m => Math.Abs(m.Amount) >= WholeFrom);
        return new MoneyStyle(isWhole || all.Count == 0 ? 0 : all[0].Currency.MinorDigits, culture);
    }

    /// <summary>An amount: <c>−€3,210</c>.</summary>
    internal string Write(Money money) => Signed(money, plus: "");

    /// <summary>A change, with its sign on both sides of zero: <c>+€520</c>.</summary>
    internal string Change(Money money) => Signed(money, plus: "+");

    private string Signed(Money money, string plus)
    {
        var rounded = Math.Round(money.Amount, Digits, MidpointRounding.AwayFromZero);
        var number = Math.Abs(rounded).ToString("N" + (rounded == 0 ? 0 : Digits).ToString(CultureInfo.InvariantCulture), Culture);
        var (before, after) = money.Currency.SignAround(Culture);
        return (rounded < 0 ? PeopleNumber.Minus : rounded > 0 ? plus : "") + before + number + after;
    }
}
