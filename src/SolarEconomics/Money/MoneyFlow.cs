using System.Globalization;

namespace SolarEconomics;

/// <summary>Yearly amounts of money, year 0 first, with one currency and one price basis for all of them.</summary>
/// <remarks>
/// Positive is received, negative is paid. Amounts are binary floating point: they are forecasts that get discounted,
/// not payments that were made (those are in a <see cref="DatedMoneyFlow"/>). Immutable and safe between threads.
/// </remarks>
public sealed class MoneyFlow
{
    private readonly double[] _amounts;

    private MoneyFlow(double[] amounts, Currency currency, PriceBasis basis)
    {
        if (amounts.Length == 0) throw Throw.EmptyFlow();
        for (var year = 0; year < amounts.Length; year++)
        {
            if (!double.IsFinite(amounts[year])) throw Throw.NotFinite(amounts[year], year);
        }
        (_amounts, Currency, Basis) = (amounts, currency, basis);
    }

    /// <summary>ISO 4217 currency of every amount.</summary>
    public Currency Currency { get; }

    /// <summary>Price basis of every amount.</summary>
    public PriceBasis Basis { get; }

    /// <summary>Amount per year, year 0 first. Unit: <see cref="Currency"/>. Shape: 1 value or more.</summary>
    public IReadOnlyList<double> Amounts => _amounts;

    /// <summary>Number of the last year; the flow has one value more.</summary>
    public int LastYear => _amounts.Length - 1;

    /// <summary>The amount of one year.</summary>
    /// <param name="year">Year, 0 to <see cref="LastYear"/>.</param>
    public Money this[int year] => InMoney(_amounts[year]);

    internal ReadOnlySpan<double> Span => _amounts;

    /// <summary>A flow in money of the day.</summary>
    /// <param name="currency">Currency of every amount.</param>
    /// <param name="amounts">Amount per year, year 0 first; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">No amount, or one that is not a finite number.</exception>
    public static MoneyFlow Nominal(Currency currency, params ReadOnlySpan<double> amounts) =>
        new(amounts.ToArray(), currency, PriceBasis.Nominal);

    /// <summary>A flow in the money of one year.</summary>
    /// <param name="basis">Basis with its year, for example <c>PriceBasis.RealOf(2026)</c>.</param>
    /// <param name="currency">Currency of every amount.</param>
    /// <param name="amounts">Amount per year, year 0 first; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">No amount, or one that is not a finite number.</exception>
    public static MoneyFlow Of(PriceBasis basis, Currency currency, params ReadOnlySpan<double> amounts) =>
        new(amounts.ToArray(), currency, basis);

    /// <summary>Year by year sum; the shorter flow counts as 0 after its end.</summary>
    /// <exception cref="MixedMoneyException">Currency or basis differ.</exception>
    public static MoneyFlow operator +(MoneyFlow a, MoneyFlow b) => Combine(a, b, 1);

    /// <summary>Year by year difference; the shorter flow counts as 0 after its end.</summary>
    /// <exception cref="MixedMoneyException">Currency or basis differ.</exception>
    public static MoneyFlow operator -(MoneyFlow a, MoneyFlow b) => Combine(a, b, -1);

    /// <summary>The flow with every sign turned.</summary>
    public static MoneyFlow operator -(MoneyFlow a) => a * -1;

    /// <summary>Every amount scaled by a bare number.</summary>
    public static MoneyFlow operator *(MoneyFlow a, double factor) =>
        new(Array.ConvertAll(a._amounts, x => x * factor), a.Currency, a.Basis);

    /// <summary>This nominal flow in the money of year 0.</summary>
    /// <param name="yearZero">Calendar year whose money year 0 is in. Range: 1900 to 2200.</param>
    /// <param name="inflationPerYear">Inflation per year, a fraction. Range: above -1, below 1.</param>
    /// <exception cref="BasisMismatchException">The flow is real already.</exception>
    /// <remarks>Equation: real = nominal / (1 + inflation)ᵗ. Source: money-3 (Fisher).</remarks>
    public MoneyFlow ToReal(int yearZero, double inflationPerYear) => Basis.IsNominal
        ? Scaled(PriceBasis.RealOf(yearZero), 1 / (1 + Rate.Asked(inflationPerYear)))
        : throw Throw.FlowAlready(Basis);

    /// <summary>This real flow in money of the day, where its money is that of year 0.</summary>
    /// <param name="inflationPerYear">Inflation per year, a fraction. Range: above -1, below 1.</param>
    /// <exception cref="BasisMismatchException">The flow is nominal already.</exception>
    /// <remarks>Equation: nominal = real · (1 + inflation)ᵗ. Source: money-3 (Fisher).</remarks>
    public MoneyFlow ToNominal(double inflationPerYear) => Basis.IsNominal
        ? throw Throw.FlowAlready(Basis)
        : Scaled(PriceBasis.Nominal, 1 + Rate.Asked(inflationPerYear));

    /// <summary>Prints the years, currency and basis, not the amounts.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"years 0 to {LastYear}, {Currency}, {Basis}");

    internal Money InMoney(double amount) => new(Throw.IfTooLarge(amount), Currency, Basis);

    private MoneyFlow Scaled(PriceBasis basis, double factorPerYear)
    {
        var scaled = new double[_amounts.Length];
        for (var year = 0; year < scaled.Length; year++) scaled[year] = _amounts[year] * Math.Pow(factorPerYear, year);
        return new MoneyFlow(scaled, Currency, basis);
    }

    private static MoneyFlow Combine(MoneyFlow a, MoneyFlow b, double sign)
    {
        if (a.Currency != b.Currency || a.Basis != b.Basis) throw Throw.MixedFlows(a, b);
        var sum = new double[Math.Max(a._amounts.Length, b._amounts.Length)];
        a._amounts.CopyTo(sum, 0);
        for (var year = 0; year < b._amounts.Length; year++) sum[year] += sign * b._amounts[year];
        return new MoneyFlow(sum, a.Currency, a.Basis);
    }
}
