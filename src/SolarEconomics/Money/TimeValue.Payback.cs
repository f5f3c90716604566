using NodaTime;

namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>Payback of one cost by one yearly saving (simple payback).</summary>
    /// <param name="cost">What is paid now. Unit: any money. Range: above 0.</param>
    /// <param name="savingPerYear">What is saved each year, in the same unit.</param>
    /// <returns>Years; <see langword="null"/> where the saving is 0 or less and the cost never comes back.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The cost is not above 0, or a number is not finite.</exception>
    /// <remarks>Equation: cost / saving. It knows nothing of replacements, ageing or prices: the straight line. Source: money-2.</remarks>
    public static double? SimplePayback(double cost, double savingPerYear)
    {
        if (!(Require.Finite(cost) > 0)) throw Throw.CostNotPositive(cost);
        return Require.Finite(savingPerYear) > 0 ? cost / savingPerYear : null;
    }

    /// <summary>Payback of yearly amounts: first and lasting, undiscounted, interpolated inside the year.</summary>
    /// <param name="flow">Amount per year, year 0 first; later ones arrive evenly during their year. Shape: 1 value or more, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">No amount, or one that is not finite.</exception>
    /// <remarks>Source: money-2.</remarks>
    public static PaybackYears Payback(ReadOnlySpan<double> flow) => PaybackOf(Finite(flow).ToArray());

    /// <summary>Payback of a yearly flow of money: first and lasting, undiscounted.</summary>
    /// <inheritdoc cref="Payback(ReadOnlySpan{double})"/>
    public static PaybackYears Payback(MoneyFlow flow)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return PaybackOf(flow.Span.ToArray());
    }

    /// <summary>Discounted payback of yearly amounts: first and lasting.</summary>
    /// <param name="flow">Amount per year, year 0 first. Shape: 1 value or more, finite.</param>
    /// <param name="rate">Discount rate per year, a fraction. Range: above -1, below 1.</param>
    /// <returns>The payback of the amounts discounted as in <see cref="Npv(ReadOnlySpan{double}, double)"/>; its end is the net present value.</returns>
    /// <remarks>Equation: the payback of Fₜ / (1 + r)ᵗ, straight inside the year. Source: money-7.</remarks>
    public static PaybackYears DiscountedPayback(ReadOnlySpan<double> flow, double rate) =>
        DiscountedPaybackOf(Finite(flow), Rate.Asked(rate));

    /// <summary>Discounted payback of a yearly flow of money: first and lasting.</summary>
    /// <param name="flow">Amounts per year, year 0 first.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Source: money-7.</remarks>
    public static PaybackYears DiscountedPayback(MoneyFlow flow, Rate rate)
    {
        var perYear = RateOf(flow, rate);
        return DiscountedPaybackOf(flow.Span, perYear);
    }

    /// <summary>Payback of dated payments: the first and the lasting day on which the running sum is 0 or above.</summary>
    /// <param name="flow">The payments.</param>
    /// <returns>Days and the sum at the end; nothing is interpolated between payments.</returns>
    /// <remarks>All payments of a day count before the sum is judged. Source: money-2.</remarks>
    public static PaybackDates Payback(DatedMoneyFlow flow)
    {
        ArgumentNullException.ThrowIfNull(flow);
        var sum = flow.InMoney(0);
        LocalDate? first = null;
        LocalDate? lasting = null;
        foreach (var day in flow.Amounts.GroupBy(a => a.Date))
        {
            foreach (var payment in day) sum += new Money(payment.Amount, flow.Currency, flow.Basis);
            lasting = sum.Amount < 0 ? null : lasting ?? day.Key;
            first ??= lasting;
        }
        return new PaybackDates(first, lasting, sum);
    }

    private static PaybackYears DiscountedPaybackOf(ReadOnlySpan<double> flow, double rate)
    {
        var discounted = flow.ToArray();
        for (var year = 1; year < discounted.Length; year++) discounted[year] *= Math.Pow(1 + rate, -year);
        return PaybackOf(discounted);
    }

    private static PaybackYears PaybackOf(double[] flow)
    {
        var sums = new double[flow.Length];
        var sum = 0.0;
        double? first = null;
        double? lasting = null;
        for (var year = 0; year < flow.Length; year++)
        {
            var before = sum;
            sum = sums[year] = before + flow[year];
            if (sum < 0)
            {
                lasting = null;
            }
            else if (lasting is null)
            {
                // Year t's amount arrives between t - 1 and t; year 0's is there at once.
                lasting = year == 0 ? 0 : year - 1 + -before / flow[year];
                first ??= lasting;
            }
        }
        return new PaybackYears(first, lasting, sums);
    }
}
