namespace SolarEconomics;

/// <summary>An ISO 4217 currency, by its three-letter code.</summary>
/// <remarks>The <c>default</c> has no code. Source: money-1 (ISO 4217 list one).</remarks>
public readonly partial record struct Currency
{
    private Currency(string code) => Code = code;

    /// <summary>Three capital letters, for example <c>EUR</c>.</summary>
    public string Code { get; }

    /// <summary>The currency of a code.</summary>
    /// <param name="code">Three letters of ISO 4217; case does not matter.</param>
    /// <exception cref="UnknownNameException">No such currency; the message names the nearest codes.</exception>
    public static Currency Of(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        var upper = code.Trim().ToUpperInvariant();
        return CurrencyTable.MinorDigits.ContainsKey(upper) ? new Currency(upper) : throw Throw.UnknownCurrency(code);
    }

    /// <summary>Digits after the point that the currency's smallest coin needs: 2 for EUR, 0 for JPY.</summary>
    public int MinorDigits => CurrencyTable.MinorDigits.GetValueOrDefault(Code ?? "", 2);

    /// <summary>Prints the code.</summary>
    public override string ToString() => Code ?? "no currency";
}
