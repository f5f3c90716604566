using NodaTime;

namespace SolarEconomics;

/// <content>The annual percentage rate (APR) by the actuarial rule of Regulation Z: it makes a "0 %" offer with fees comparable.</content>
public static partial class TimeValue
{
    /// <summary>Annual percentage rate (APR) of one advance repaid in regular payments; the first period may be odd.</summary>
    /// <param name="advance">What the borrower really gets, fees taken off. Range: above 0.</param>
    /// <param name="advanced">Day on which it is paid out.</param>
    /// <param name="firstPayment">Day of the first payment; the others follow one unit period apart.</param>
    /// <param name="unit">Distance between payments.</param>
    /// <param name="payments">What is paid, fees included, in order; all 0 or more. Amounts may differ.</param>
    /// <returns>Unit-period rate × periods in a year, a fraction: 0.0969 is printed 9.69 %. It is a quoted rate, not an effective one.</returns>
    /// <exception cref="ArgumentException">Days out of order, no payment, or payments that sum to less than the advance.</exception>
    /// <remarks>Equation: advance = Σₖ Pₖ / ((1 + f·i)(1 + i)^(t + k)), t whole and f part of a unit period before the first payment,
    /// counted back from it. Source: money-11.</remarks>
    public static double Apr(
        double advance, LocalDate advanced, LocalDate firstPayment, UnitPeriod unit, params ReadOnlySpan<double> payments)
    {
        if (!(Require.Finite(advance) > 0)) throw Throw.CostNotPositive(advance);
        if (firstPayment < advanced) throw Throw.OutOfOrder(new DatedAmount(advanced, 0), new DatedAmount(firstPayment, 0));
        var paid = Finite(payments).ToArray();
        if (paid.Any(p => p < 0) || paid.Sum() < advance) throw Throw.PaysBackTooLittle(advance, paid.Sum());
        var (whole, part) = UnitPeriods(advanced, firstPayment, unit);
        return PeriodRate(advance, paid, whole, part) * PerYear(unit);
    }

    /// <summary>Annual percentage rate (APR) of one advance repaid in one payment.</summary>
    /// <param name="advance">What the borrower really gets, fees taken off. Range: above 0.</param>
    /// <param name="advanced">Day on which it is paid out.</param>
    /// <param name="payment">What is paid back. Range: the advance or more.</param>
    /// <param name="paid">Day of the payment, later than <paramref name="advanced"/>.</param>
    /// <returns>The annual percentage rate, a fraction.</returns>
    /// <exception cref="ArgumentException">Days out of order, or a payment below the advance.</exception>
    /// <remarks>Under a year the term is the unit period: simple interest, by months where the term is whole months, else by days of 365.
    /// From a year on the unit period is a year, odd days over 365. Source: money-11.</remarks>
    public static double AprOfOnePayment(double advance, LocalDate advanced, double payment, LocalDate paid)
    {
        if (!(Require.Finite(advance) > 0)) throw Throw.CostNotPositive(advance);
        if (paid <= advanced) throw Throw.OutOfOrder(new DatedAmount(advanced, 0), new DatedAmount(paid, 0));
        if (Require.Finite(payment) < advance) throw Throw.PaysBackTooLittle(advance, payment);
        var years = Period.Between(advanced, paid, PeriodUnits.Years).Years;
        if (years > 0)
        {
            var oddDays = Days(advanced, paid.PlusYears(-years));
            return PeriodRate(advance, [payment], years, oddDays / 365.0);
        }
        var (months, days) = UnitPeriods(advanced, paid, UnitPeriod.Month);
        return (payment / advance - 1) * (days == 0 ? 12.0 / months : 365.0 / Days(advanced, paid));
    }

    /// <summary>Whole unit periods and the odd part before a payment, counted back from it.</summary>
    private static (int Whole, double Part) UnitPeriods(LocalDate from, LocalDate payment, UnitPeriod unit)
    {
        if (unit == UnitPeriod.Week)
        {
            var (weeks, rest) = Math.DivRem(Days(from, payment), 7);
            return (weeks, rest / 7.0);
        }
        var months = 0;
        while (payment.PlusMonths(-(months + 1)) >= from) months++;
        var oddDays = Days(from, payment.PlusMonths(-months));
        if (unit == UnitPeriod.Month) return (months, oddDays / 30.0);
        var halves = oddDays / 15;
        return (2 * months + halves, (oddDays - 15 * halves) / 15.0);
    }

    private static int PerYear(UnitPeriod unit) => unit switch
    {
        UnitPeriod.Month => 12,
        UnitPeriod.HalfMonth => 24,
        UnitPeriod.Week => 52,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Expected a named unit period."),
    };

    /// <summary>The rate per unit period at which the payments are worth the advance; their value falls with the rate, so halving cannot miss.</summary>
    private static double PeriodRate(double advance, double[] payments, int whole, double part)
    {
        var (low, high) = (0.0, 0.125);
        while (Worth(high) > advance) high *= 2;
        for (var step = 0; step < 200 && high - low > 1e-16 * high; step++)
        {
            var middle = (low + high) / 2;
            if (Worth(middle) > advance) low = middle; else high = middle;
        }
        return (low + high) / 2;

        double Worth(double rate)
        {
            var factor = 1 / (1 + rate);
            var sum = 0.0;
            for (var k = payments.Length - 1; k >= 0; k--) sum = sum * factor + payments[k];
            return sum * Math.Pow(factor, whole) / (1 + part * rate);
        }
    }
}
