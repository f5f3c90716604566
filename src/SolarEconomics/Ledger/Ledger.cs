using NodaTime;

namespace SolarEconomics;

/// <summary>What was paid and received for the plant, entry by entry in date order.</summary>
/// <remarks>
/// Immutable and safe between threads. Two views: <see cref="CashFlows"/> is the project's (no loan flows),
/// <see cref="OwnerCashFlows"/> the owner's (with them). Own hours, gifts and barter move no money; they are listed and can be priced.
/// Amounts are what the owner entered: not tax or credit advice.
/// </remarks>
public sealed partial class Ledger
{
    private readonly LedgerEntry[] _entries;

    private Ledger(IEnumerable<LedgerEntry> entries, IReadOnlyList<Problem> notes)
    {
        _entries = [.. entries.OrderBy(e => e.Date)];
        Notes = notes;
        FirstPurchase = _entries.FirstOrDefault(e => e.Kind == LedgerKind.Purchase) ?? throw Throw.NoPurchase(_entries);
    }

    /// <summary>Every entry, earliest first; those of one day as they stood in the file.</summary>
    public IReadOnlyList<LedgerEntry> Entries => _entries;

    /// <summary>What was noticed while reading and lost nothing: entries out of order, columns that are not used.</summary>
    public IReadOnlyList<Problem> Notes { get; }

    /// <summary>The first purchase: from its day the payback is counted.</summary>
    public LedgerEntry FirstPurchase { get; }

    /// <summary>A ledger of entries written in code.</summary>
    /// <param name="entries">Entries in any order, one of them a purchase.</param>
    /// <exception cref="RecordException">There is no purchase.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An amount or own hours below 0 (the kind says which way money went), or an amount above 1e12.</exception>
    public static Ledger From(params IEnumerable<LedgerEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var list = entries.ToArray();
        foreach (var entry in list)
        {
            if (entry.Amount.Amount < 0) throw Throw.NegativeEntry(entry);
            foreach (var amount in new[] { entry.Amount, entry.MarketPrice ?? entry.Amount })
            {
                if (amount.Amount > LedgerRow.MostMoney) throw Throw.EntryTooLarge(entry, amount);
            }
            Require.Within(entry.OwnHours, 0, 1e5, "hours");
        }
        return new Ledger(list, []);
    }

    /// <summary>The entries of some kinds, earliest first.</summary>
    /// <param name="kinds">Kinds to keep.</param>
    public IReadOnlyList<LedgerEntry> Of(params LedgerKind[] kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        return [.. _entries.Where(e => kinds.Contains(e.Kind))];
    }

    /// <summary>The entries of one class, earliest first.</summary>
    /// <param name="entryClass">Class to keep.</param>
    public IReadOnlyList<LedgerEntry> Of(LedgerClass entryClass) => [.. _entries.Where(e => e.Class == entryClass)];

    /// <summary>The entries up to and without a day.</summary>
    /// <param name="end">First day that no longer counts; the first purchase must be earlier.</param>
    /// <exception cref="RecordException">No purchase is left.</exception>
    public Ledger Before(LocalDate end) => new(_entries.Where(e => e.Date < end), Notes) { OwnHourRate = OwnHourRate };

    /// <summary>The money that moved, without loan flows (the project's view): paid negative, received positive.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public DatedMoneyFlow CashFlows() => Flow(e => e.Class is not LedgerClass.NoMoney and not LedgerClass.Finance, e => e.CashFlow.Amount);

    /// <summary>The money that moved, with loan flows (the owner's view, nominal): paid negative, received positive.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public DatedMoneyFlow OwnerCashFlows() => Flow(e => e.Class is not LedgerClass.NoMoney, e => e.CashFlow.Amount);

    /// <summary>The project's cash flows with the owner's hours paid at a stated rate.</summary>
    /// <param name="ratePerHour">What an hour is worth, in the ledger's currency. Range: 0 to 1e9.</param>
    /// <exception cref="MixedMoneyException">Entries of different currencies, or the rate is in another one.</exception>
    /// <remarks>Show every result without and with own hours.</remarks>
    public DatedMoneyFlow CashFlowsWithOwnHours(Money ratePerHour)
    {
        CheckHourRate(ratePerHour);
        return Flow(
            e => e.Class is not LedgerClass.Finance && (e.Class is not LedgerClass.NoMoney || e.OwnHours > 0),
            e => e.CashFlow.Amount - PriceOf(e, ratePerHour));
    }

    /// <summary>The one currency of the ledger.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public Currency Currency
    {
        get
        {
            var first = _entries[0];
            var other = Array.Find(_entries, e => e.Amount.Currency != first.Amount.Currency);
            return other is null ? first.Amount.Currency : throw Throw.MixedLedger(first, other);
        }
    }

    private DatedMoneyFlow Flow(Func<LedgerEntry, bool> counts, Func<LedgerEntry, decimal> amount) =>
        DatedMoneyFlow.InOrder(Currency, PriceBasis.Nominal,
            _entries.Where(counts).Select(e => new DatedAmount(e.Date, amount(e)) { Origin = e.Origin }));
}
