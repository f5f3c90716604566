using NodaTime;

namespace SolarEconomics;

/// <summary>Payments on their days, earliest first, with one currency and one price basis for all of them.</summary>
/// <remarks>Positive is received, negative is paid. Immutable and safe between threads.</remarks>
public sealed class DatedMoneyFlow
{
    private readonly DatedAmount[] _amounts;

    private DatedMoneyFlow(DatedAmount[] amounts, Currency currency, PriceBasis basis) =>
        (_amounts, Currency, Basis) = (amounts, currency, basis);

    /// <summary>ISO 4217 currency of every payment.</summary>
    public Currency Currency { get; }

    /// <summary>Price basis of every payment.</summary>
    public PriceBasis Basis { get; }

    /// <summary>The payments, earliest first; one or more.</summary>
    public IReadOnlyList<DatedAmount> Amounts => _amounts;

    /// <summary>The day of the first payment.</summary>
    public LocalDate FirstDate => _amounts[0].Date;

    /// <summary>The day of the last payment.</summary>
    public LocalDate LastDate => _amounts[^1].Date;

    /// <summary>The plain sum of all payments.</summary>
    /// <exception cref="OverflowException">It is beyond 7.9e28.</exception>
    public Money Total => _amounts.Aggregate(new Money(0, Currency, Basis), (sum, a) => sum + new Money(a.Amount, Currency, Basis));

    /// <summary>A flow of payments that stand in date order.</summary>
    /// <param name="currency">Currency of every payment.</param>
    /// <param name="basis">Price basis of every payment.</param>
    /// <param name="amounts">The payments, earliest first; one or more.</param>
    /// <exception cref="ArgumentException">No payment, or one earlier than the one before it; the message names it.</exception>
    public static DatedMoneyFlow InOrder(Currency currency, PriceBasis basis, IEnumerable<DatedAmount> amounts)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        var list = amounts.ToArray();
        if (list.Length == 0) throw Throw.EmptyFlow();
        for (var i = 1; i < list.Length; i++)
        {
            if (list[i].Date < list[i - 1].Date) throw Throw.OutOfOrder(list[i - 1], list[i]);
        }
        return new DatedMoneyFlow(list, currency, basis);
    }

    /// <summary>A flow of payments in any order: they are put in date order, equal days keep theirs.</summary>
    /// <param name="currency">Currency of every payment.</param>
    /// <param name="basis">Price basis of every payment.</param>
    /// <param name="amounts">The payments; one or more.</param>
    /// <exception cref="ArgumentException">No payment.</exception>
    public static DatedMoneyFlow Sorted(Currency currency, PriceBasis basis, IEnumerable<DatedAmount> amounts) =>
        InOrder(currency, basis, Require.Given(amounts).OrderBy(a => a.Date));

    /// <summary>All payments of both flows in date order.</summary>
    /// <exception cref="MixedMoneyException">Currency or basis differ.</exception>
    public static DatedMoneyFlow operator +(DatedMoneyFlow a, DatedMoneyFlow b) =>
        a.Currency == b.Currency && a.Basis == b.Basis
            ? Sorted(a.Currency, a.Basis, a._amounts.Concat(b._amounts))
            : throw Throw.MixedMoney(a.Total, b.Total);

    /// <summary>This flow with one more payment, in its place by date.</summary>
    /// <param name="date">Day of the payment.</param>
    /// <param name="amount">Amount in the flow's currency and basis.</param>
    /// <exception cref="MixedMoneyException">Currency or basis differ.</exception>
    public DatedMoneyFlow With(LocalDate date, Money amount) =>
        this + new DatedMoneyFlow([new DatedAmount(date, amount.Amount)], amount.Currency, amount.Basis);

    internal Money InMoney(double amount) => new(Throw.IfTooLarge(amount), Currency, Basis);

    /// <summary>Prints the number of payments, currency and basis, not the amounts.</summary>
    public override string ToString() =>
        $"{Wording.CountInMessage(_amounts.Length, "payment")}, {Currency}, {Basis}";
}
