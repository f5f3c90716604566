using System.Globalization;

namespace SolarEconomics;

/// <summary>An amount of money with its currency and its price basis. Mixing either throws.</summary>
/// <param name="Amount">Amount in units of the currency (euros, not cents).</param>
/// <param name="Currency">ISO 4217 currency.</param>
/// <param name="Basis">Money of the day, or of a named year.</param>
/// <remarks>The <c>default</c> has no currency and mixes with nothing.</remarks>
public readonly record struct Money(decimal Amount, Currency Currency, PriceBasis Basis)
{
    /// <summary>Money of the day.</summary>
    /// <param name="amount">Amount in units of the currency.</param>
    /// <param name="currency">ISO 4217 currency.</param>
    public static Money Nominal(decimal amount, Currency currency) => new(amount, currency, PriceBasis.Nominal);

    /// <summary>Sum of two amounts of one kind.</summary>
    /// <exception cref="MixedMoneyException">Currency or basis differ.</exception>
    public static Money operator +(Money a, Money b) => a with { Amount = Sum(a.Amount, Same(a, b).Amount, a.Currency) };

    /// <summary>Difference of two amounts of one kind.</summary>
    /// <exception cref="MixedMoneyException">Currency or basis differ.</exception>
    public static Money operator -(Money a, Money b) => a with { Amount = Sum(a.Amount, -Same(a, b).Amount, a.Currency) };

    /// <summary>The amount with the other sign.</summary>
    public static Money operator -(Money a) => a with { Amount = -a.Amount };

    /// <summary>An amount scaled by a bare number.</summary>
    public static Money operator *(Money a, decimal factor) => a with { Amount = a.Amount * factor };

    /// <summary>Prints <c>-1,234.50 EUR</c> (and the year where real) in invariant form.</summary>
    public override string ToString() =>
        Amount.ToString("#,0.00", CultureInfo.InvariantCulture) + " " + Currency.Code + (Basis.IsNominal ? "" : " (" + Basis + ")");

    private static Money Same(Money a, Money b) =>
        a.Currency == b.Currency && a.Basis == b.Basis ? b : throw Throw.MixedMoney(a, b);

    private static decimal Sum(decimal a, decimal b, Currency currency)
    {
        try { return a + b; }
        catch (OverflowException) { throw Throw.SumTooLarge(currency); }
    }
}
