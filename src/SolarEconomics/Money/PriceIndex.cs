using NodaTime;

namespace SolarEconomics;

/// <summary>A consumer price index by month: it turns money of the day into the money of one year.</summary>
/// <remarks>
/// Any index with a stated base will do; only ratios are used. A month that is missing throws: prices are not made up.
/// Immutable and safe between threads.
/// </remarks>
public sealed partial class PriceIndex
{
    private readonly SortedDictionary<YearMonth, double> _levels;

    private PriceIndex(SortedDictionary<YearMonth, double> levels) => _levels = levels;

    /// <summary>First month with a level.</summary>
    public YearMonth First => _levels.Keys.First();

    /// <summary>Last month with a level.</summary>
    public YearMonth Last => _levels.Keys.Last();

    /// <summary>An index from levels by month.</summary>
    /// <param name="levels">Month and level. Range of a level: above 0. One month or more, each once.</param>
    /// <exception cref="ArgumentException">No month, a month twice, or a level that is not above 0.</exception>
    public static PriceIndex Of(IEnumerable<(YearMonth Month, double Level)> levels)
    {
        ArgumentNullException.ThrowIfNull(levels);
        var sorted = new SortedDictionary<YearMonth, double>();
        foreach (var (month, level) in levels)
        {
            if (!(level > 0 && double.IsFinite(level)) || !sorted.TryAdd(month, level)) throw Throw.BadIndexLevel(month, level);
        }
        return sorted.Count == 0 ? throw Throw.EmptyFlow() : new PriceIndex(sorted);
    }

    /// <summary>The level of a month.</summary>
    /// <param name="month">Month of the index.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index has no such month; the message gives its ends.</exception>
    public double Level(YearMonth month) => _levels.TryGetValue(month, out var level) ? level : throw Throw.NoIndexMonth(this, month);

    /// <summary>Mean level of a calendar year.</summary>
    /// <param name="year">Calendar year; all twelve months must be there.</param>
    /// <exception cref="ArgumentOutOfRangeException">A month is missing.</exception>
    public double LevelOfYear(int year) => Enumerable.Range(1, 12).Average(month => Level(new YearMonth(year, month)));

    /// <summary>Money of the day in the money of a year.</summary>
    /// <param name="money">Nominal amount.</param>
    /// <param name="paid">Day on which it was paid; its month is looked up.</param>
    /// <param name="year">Calendar year whose mean prices count.</param>
    /// <exception cref="BasisMismatchException">The amount is real already.</exception>
    /// <remarks>Equation: amount · mean index of the year / index of the month. Source: money-14.</remarks>
    public Money ToMoneyOf(Money money, LocalDate paid, int year) => money.Basis.IsNominal
        ? new Money(money.Amount * Factor(paid, year), money.Currency, PriceBasis.RealOf(year))
        : throw Throw.FlowAlready(money.Basis);

    /// <summary>A nominal flow of payments in the money of a year.</summary>
    /// <param name="flow">Nominal payments.</param>
    /// <param name="year">Calendar year whose mean prices count.</param>
    /// <exception cref="BasisMismatchException">The flow is real already.</exception>
    /// <remarks>Equation: amount · mean index of the year / index of the month. Source: money-14.</remarks>
    public DatedMoneyFlow ToMoneyOf(DatedMoneyFlow flow, int year)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return flow.Basis.IsNominal
            ? DatedMoneyFlow.InOrder(flow.Currency, PriceBasis.RealOf(year), flow.Amounts.Select(a => a with { Amount = a.Amount * Factor(a.Date, year) }))
            : throw Throw.FlowAlready(flow.Basis);
    }

    private decimal Factor(LocalDate paid, int year) => (decimal)(LevelOfYear(year) / Level(paid.ToYearMonth()));
}
