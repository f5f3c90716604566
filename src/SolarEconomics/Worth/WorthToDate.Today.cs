namespace SolarEconomics;

public sealed partial class WorthToDate
{
    /// <summary>The value to date in the money of one year, month by month.</summary>
    /// <param name="index">Consumer prices by month; it must hold every month of the records and all of <paramref name="year"/>.</param>
    /// <param name="year">Calendar year whose money is meant.</param>
    /// <exception cref="RecordException">Nothing bounds the generation.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The index lacks a month.</exception>
    /// <remarks>Equation: Σ month's value · mean index of the year / index of the month. Source: money-14.</remarks>
    public Money ValueInMoneyOf(PriceIndex index, int year)
    {
        ArgumentNullException.ThrowIfNull(index);
        if (Value is null) throw Throw.NoValue(Site.Name);
        var sum = Months.Sum(m => index.ToMoneyOf(m.Value, m.Month.OnDayOfMonth(1), year).Amount);
        return new Money(Math.Round(sum, Site.Currency.MinorDigits, MidpointRounding.AwayFromZero), Site.Currency, PriceBasis.RealOf(year));
    }

    /// <summary>Everything paid and received so far, savings included, in the money of one year; <see langword="null"/> without a ledger or an upper end.</summary>
    /// <param name="index">Consumer prices by month, from the first purchase on.</param>
    /// <param name="year">Calendar year whose money is meant.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index lacks a month.</exception>
    public DatedMoneyFlow? CashSoFarInMoneyOf(PriceIndex index, int year)
    {
        ArgumentNullException.ThrowIfNull(index);
        return CashSoFar is { } cash ? index.ToMoneyOf(cash, year) : null;
    }
}
