using System.Globalization;

namespace SolarEconomics;

public sealed partial class Ledger : IFinding
{
    /// <summary>Name under which totals list the entries that belong to no device.</summary>
    private const string AllDevices = "all devices";

    /// <summary>What was paid and received, by kind and by device.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public LedgerTotals Totals() => new(
        -Sum(e => e.Class == LedgerClass.Investment),
        -Sum(e => e.Class == LedgerClass.Running),
        Sum(e => e.Class == LedgerClass.Income),
        [.. _entries.GroupBy(e => e.Kind).OrderBy(g => g.Key)
            .Select(g => (g.Key, g.Count(), Money.Nominal(g.Sum(e => e.Amount.Amount), Currency)))],
        [.. _entries.GroupBy(e => e.Device ?? AllDevices, StringComparer.OrdinalIgnoreCase).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (g.Key, Money.Nominal(g.Where(e => e.Class != LedgerClass.Finance).Sum(e => e.CashFlow.Amount), Currency)))],
        _entries.Sum(e => e.OwnHours));

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => Totals().Say(culture);

    private Money Sum(Func<LedgerEntry, bool> counts) =>
        Money.Nominal(_entries.Where(counts).Sum(e => e.CashFlow.Amount), Currency);
}
