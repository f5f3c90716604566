namespace SolarEconomics;

public sealed partial class Ledger
{
    /// <summary>Every receipt by kind and device.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public ReceiptTable Receipts() => new(
        [.. _entries.GroupBy(e => (e.Kind, Device: e.Device ?? AllDevices)).OrderBy(g => g.Key.Kind).ThenBy(g => g.Key.Device, StringComparer.Ordinal)
            .Select(g => (g.Key.Kind, g.Key.Device, g.Count(), Money.Nominal(g.Sum(e => e.Amount.Amount), Currency)))], Currency);

    /// <summary>Claims under warranties and insurance, paid and refused.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public WarrantyRecord Claims() => new(Of(LedgerKind.WarrantyPaid), Of(LedgerKind.WarrantyRefused), Currency);

    /// <summary>Gifts, barter and bargains: what was paid, and what the market asks.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public InKindRecord InKind()
    {
        var entries = _entries.Where(e => e.MarketPrice is not null || e.Kind is LedgerKind.Gift or LedgerKind.Barter).ToList();
        return new InKindRecord(entries, -Sum(entries.Contains), Money.Nominal(entries.Sum(e => (e.MarketPrice ?? e.Amount).Amount), Currency));
    }

    /// <summary>Spares bought, put to use and left.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public SpareStock Spares()
    {
        Money Cost(IEnumerable<LedgerEntry> entries) => Money.Nominal(entries.Sum(e => e.Amount.Amount), Currency);
        var (bought, used) = (Of(LedgerKind.Spare), Of(LedgerKind.SpareUsed));
        var devices = bought.Concat(used).GroupBy(e => e.Device ?? AllDevices, StringComparer.OrdinalIgnoreCase).OrderBy(g => g.Key, StringComparer.Ordinal);
        return new SpareStock(Cost(bought), Cost(used), Cost(bought) - Cost(used),
            [.. devices.Select(g => (g.Key, Cost(g.Where(e => e.Kind == LedgerKind.Spare)) - Cost(g.Where(e => e.Kind == LedgerKind.SpareUsed))))]);
    }
}
