namespace SolarEconomics;

public sealed partial class Ledger
{
    /// <summary>What an own hour counts for in the amounts of this ledger; <see langword="null"/> where own hours cost nothing.</summary>
    public Money? OwnHourRate { get; private init; }

    /// <summary>All own hours, whether they cost something here or not. Unit: h.</summary>
    public double OwnHours => _entries.Sum(e => e.OwnHours + e.PaidOwnHours);

    /// <summary>This ledger with the owner's hours paid at a stated rate: hours worked with a payment are added to it, hours by themselves become a payment.</summary>
    /// <param name="ratePerHour">What an hour is worth, in the ledger's currency. Range: 0 to 1e9.</param>
    /// <param name="putUp">Tells hours that put the plant up (a purchase) from those that keep it running (labour), for entries that are neither by themselves.</param>
    /// <remarks>Hours before the first purchase count on its day: payback is counted from there. Hours with a loan's entries stay out, as the loan does.</remarks>
    internal Ledger WithOwnHoursPaid(Money ratePerHour, Func<LedgerEntry, bool> putUp)
    {
        CheckHourRate(ratePerHour);
        List<LedgerEntry> paid = [], apart = [];
        foreach (var entry in _entries)
        {
            if (entry.OwnHours == 0 || entry.Class == LedgerClass.Finance)
            {
                paid.Add(entry);
                continue;
            }
            var worth = ratePerHour with { Amount = PriceOf(entry, ratePerHour) };
            var counted = entry with { OwnHours = 0, PaidOwnHours = entry.OwnHours };
            if (LedgerKinds.SignOf(entry.Kind) < 0)
            {
                paid.Add(counted with { Amount = entry.Amount + worth });
                continue;
            }
            // A sale, a gift or hours alone: what was received or noted stays, the hours stand beside it.
            if (entry.Kind != LedgerKind.OwnHours) paid.Add(entry with { OwnHours = 0 });
            apart.Add(counted with
            {
                Date = NodaTime.LocalDate.Max(entry.Date, FirstPurchase.Date), Kind = putUp(entry) ? LedgerKind.Purchase : LedgerKind.Labour, Amount = worth, MarketPrice = null,
            });
        }
        // The first purchase stays the first: what stands apart comes after all else of its day.
        return new Ledger(paid.Concat(apart), Notes) { OwnHourRate = ratePerHour };
    }

    private decimal PriceOf(LedgerEntry entry, Money ratePerHour) =>
        Math.Round((decimal)entry.OwnHours * ratePerHour.Amount, Currency.MinorDigits, MidpointRounding.AwayFromZero);

    private void CheckHourRate(Money ratePerHour)
    {
        if (ratePerHour.Currency != Currency || !ratePerHour.Basis.IsNominal) throw Throw.MixedMoney(_entries[0].Amount, ratePerHour);
        Require.Within((double)ratePerHour.Amount, 0, 1e9, "money an hour", nameof(ratePerHour));
    }
}
