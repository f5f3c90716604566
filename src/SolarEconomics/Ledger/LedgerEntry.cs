using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>One dated entry of the ledger: a receipt, a payment, or something worth knowing that cost no money.</summary>
/// <param name="Date">Day of the payment.</param>
/// <param name="Kind">What it is for; the kind says which way the money went.</param>
/// <param name="Amount">Amount, 0 or more, in money of the day. For a kind without money: the market price or the sum claimed.</param>
public sealed record LedgerEntry(LocalDate Date, LedgerKind Kind, Money Amount)
{
    /// <summary>Device it belongs to, as the plant names it; <see langword="null"/> where it belongs to all.</summary>
    public string? Device { get; init; }

    /// <summary>The owner's words, which may name people and shops: results leave them out unless asked.</summary>
    public string? Description { get; init; }

    /// <summary>Own hours worked. Unit: h. 0 or more.</summary>
    public double OwnHours { get; init; }

    /// <summary>Own hours that are in the amount already, priced. Unit: h.</summary>
    internal double PaidOwnHours { get; init; }

    /// <summary>What the market asks for it, where less was paid: a bargain, a swap with money on top; <see langword="null"/> where the price paid was the market's.</summary>
    public Money? MarketPrice { get; init; }

    /// <summary>File it was read from, as the user gave it; <see langword="null"/> where it was written in code.</summary>
    public string? File { get; init; }

    /// <summary>Line in <see cref="File"/>, counted from 1; 0 where it was written in code.</summary>
    public int Line { get; init; }

    /// <summary>What it does to the account of the plant.</summary>
    public LedgerClass Class => LedgerKinds.ClassOf(Kind);

    /// <summary>What the entry did to the owner's pocket: paid is negative, received positive, 0 where no money moved.</summary>
    public Money CashFlow => Amount * LedgerKinds.SignOf(Kind);

    /// <summary>Where it was read, <c>ledger.csv, line 4</c>; <see langword="null"/> where it was written in code.</summary>
    internal string? Origin => File is null ? null : string.Create(CultureInfo.InvariantCulture, $"{File}, line {Line}");
}
