using System.Globalization;

namespace SolarEconomics;

public sealed partial class Ledger : IFinding
{
    /// <summary>Name under which totals list the entries that belong to no device.</summary>
    private const string AllDevices = "all devices";

    /// <summary>What was paid and received, by kind and by device.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public LedgerTotals Totals() => TotalsOf(e => e.Amount.Amount, PriceBasis.Nominal);

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => Totals().Say(Require.Given(culture));

    private LedgerTotals TotalsOf(Func<LedgerEntry, decimal> amount, PriceBasis basis)
    {
        var currency = Currency;
        Money In(IEnumerable<LedgerEntry> entries, Func<LedgerEntry, int> sign) => new(
            Math.Round(entries.Sum(e => sign(e) * amount(e)), currency.MinorDigits, MidpointRounding.AwayFromZero), currency, basis);
        Money Flow(LedgerClass kind) => In(_entries.Where(e => e.Class == kind), e => LedgerKinds.SignOf(e.Kind));
        return new LedgerTotals(
            -Flow(LedgerClass.Investment), -Flow(LedgerClass.Running), Flow(LedgerClass.Income),
            [.. _entries.GroupBy(e => e.Kind).OrderBy(g => g.Key).Select(g => (g.Key, g.Count(), In(g, _ => 1)))],
            [.. _entries.GroupBy(e => e.Device ?? AllDevices, StringComparer.OrdinalIgnoreCase).OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => (g.Key, In(g.Where(e => e.Class != LedgerClass.Finance), e => LedgerKinds.SignOf(e.Kind))))],
            OwnHours) { OwnHourRate = OwnHourRate };
    }

    private Money Sum(Func<LedgerEntry, bool> counts) =>
        Money.Nominal(_entries.Where(counts).Sum(e => e.CashFlow.Amount), Currency);
}
