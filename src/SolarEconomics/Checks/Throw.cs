namespace SolarEconomics;

/// <summary>All messages of the domain: found, where, expected, what to do. Split by room into partial files.</summary>
internal static partial class Throw
{
    internal static MixedMoneyException MixedMoney(Money a, Money b) =>
        new($"Found {a.Currency} {a.Basis} together with {b.Currency} {b.Basis}, expected one currency and one price basis. " +
            "Convert one of them first by a named rate or price index.");

    internal static UnknownNameException UnknownCurrency(string code) =>
        new($"Found currency \"{code}\", expected a code of ISO 4217 such as {Nearest.List(code, CurrencyTable.MinorDigits.Keys)}.");
}
