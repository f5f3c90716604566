using NodaTime;

namespace SolarEconomics;

public sealed partial class Ledger
{
    /// <summary>Every calendar month from the first entry to the last, months without entries too.</summary>
    /// <exception cref="MixedMoneyException">Entries of different currencies; the message names both with file and line.</exception>
    public IReadOnlyList<LedgerMonth> ByMonth()
    {
        var byMonth = _entries.ToLookup(e => e.Date.ToYearMonth());
        var months = new List<LedgerMonth>();
        for (var month = _entries[0].Date.ToYearMonth(); month <= _entries[^1].Date.ToYearMonth(); month = month.PlusMonths(1))
        {
            var entries = byMonth[month].ToList();
            Money Flow(LedgerClass kind) => Money.Nominal(entries.Where(e => e.Class == kind).Sum(e => e.CashFlow.Amount), Currency);
            months.Add(new LedgerMonth(month, -Flow(LedgerClass.Investment), -Flow(LedgerClass.Running), Flow(LedgerClass.Income), Flow(LedgerClass.Finance),
                [.. entries.GroupBy(e => e.Kind).OrderBy(g => g.Key).Select(g => (g.Key, Money.Nominal(g.Sum(e => e.Amount.Amount), Currency)))]));
        }
        return months;
    }

    /// <summary>What was paid and received, by kind and by device, in the money of one year.</summary>
    /// <param name="index">Consumer prices by month; it must hold every month with an entry and all of <paramref name="year"/>.</param>
    /// <param name="year">Calendar year whose money is meant.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index lacks a month.</exception>
    /// <remarks>Equation: amount · mean index of the year / index of the month. Source: money-14.</remarks>
    public LedgerTotals TotalsInMoneyOf(PriceIndex index, int year)
    {
        ArgumentNullException.ThrowIfNull(index);
        return TotalsOf(e => index.ToMoneyOf(e.Amount, e.Date, year).Amount, PriceBasis.RealOf(year));
    }
}
