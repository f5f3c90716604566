namespace SolarEconomics;

/// <content>
/// A loan has six unknowns: present value, payment, number of payments, rate per period, future value, and the timing of the payments.
/// Any of the first five follows from the others. Signs are those of one pocket: a loan received is positive, its payments negative.
/// </content>
public static partial class TimeValue
{
    /// <summary>Payment per period (PMT) of a loan or savings plan.</summary>
    /// <param name="ratePerPeriod">Rate per period, a fraction: 0.06/12 for 6 % a year quoted monthly. Range: above -1, below 1.</param>
    /// <param name="periods">Number of payments. Range: above 0; need not be whole.</param>
    /// <param name="presentValue">What is received (positive) or laid down (negative) at the start.</param>
    /// <param name="futureValue">What is received (positive) or paid (negative) with the last payment: a balloon is negative. Default: 0.</param>
    /// <param name="timing">Whether payments are made at the end or the start of a period.</param>
    /// <returns>Payment in the unit of the values; negative where it is paid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range or not finite.</exception>
    /// <remarks>Equation: PV·(1 + i)ⁿ + PMT·(1 + i·s)·((1 + i)ⁿ - 1)/i + FV = 0, s = 1 for payments at the start. Source: money-10.</remarks>
    public static double Pmt(
        double ratePerPeriod, double periods, double presentValue, double futureValue = 0, PaymentTiming timing = PaymentTiming.PeriodEnd) =>
        -(Require.Finite(futureValue) + Require.Finite(presentValue) * Grown(ratePerPeriod, periods)) / Payments(ratePerPeriod, periods, timing);

    /// <summary>Future value (FV) after the last payment.</summary>
    /// <param name="ratePerPeriod">Rate per period, a fraction. Range: above -1, below 1.</param>
    /// <param name="periods">Number of payments. Range: above 0; need not be whole.</param>
    /// <param name="payment">Payment per period; negative where it is paid.</param>
    /// <param name="presentValue">What is received (positive) or laid down (negative) at the start. Default: 0.</param>
    /// <param name="timing">Whether payments are made at the end or the start of a period.</param>
    /// <returns>What remains to be received (positive) or paid (negative) at the end.</returns>
    /// <remarks>Equation: as for <see cref="Pmt"/>. Source: money-10.</remarks>
    public static double Fv(
        double ratePerPeriod, double periods, double payment, double presentValue = 0, PaymentTiming timing = PaymentTiming.PeriodEnd) =>
        -(Require.Finite(presentValue) * Grown(ratePerPeriod, periods) + Require.Finite(payment) * Payments(ratePerPeriod, periods, timing));

    /// <summary>Present value (PV) of level payments and a last amount.</summary>
    /// <param name="ratePerPeriod">Rate per period, a fraction. Range: above -1, below 1.</param>
    /// <param name="periods">Number of payments. Range: above 0; need not be whole.</param>
    /// <param name="payment">Payment per period; negative where it is paid.</param>
    /// <param name="futureValue">What is received (positive) or paid (negative) with the last payment. Default: 0.</param>
    /// <param name="timing">Whether payments are made at the end or the start of a period.</param>
    /// <returns>What is received (positive) or laid down (negative) at the start.</returns>
    /// <remarks>Equation: as for <see cref="Pmt"/>. Source: money-10.</remarks>
    public static double Pv(
        double ratePerPeriod, double periods, double payment, double futureValue = 0, PaymentTiming timing = PaymentTiming.PeriodEnd) =>
        -(Require.Finite(futureValue) + Require.Finite(payment) * Payments(ratePerPeriod, periods, timing)) / Grown(ratePerPeriod, periods);

    /// <summary>Number of payments (NPER) until the future value is reached.</summary>
    /// <param name="ratePerPeriod">Rate per period, a fraction. Range: above -1, below 1.</param>
    /// <param name="payment">Payment per period; negative where it is paid.</param>
    /// <param name="presentValue">What is received (positive) or laid down (negative) at the start.</param>
    /// <param name="futureValue">What is received (positive) or paid (negative) at the end. Default: 0.</param>
    /// <param name="timing">Whether payments are made at the end or the start of a period.</param>
    /// <returns>Number of periods, 0 or more; not whole in general.</returns>
    /// <exception cref="ArgumentException">The payments never get there; the message gives the interest they would have to exceed.</exception>
    /// <remarks>Equation: n = ln((z - FV) / (z + PV)) / ln(1 + i), z = PMT·(1 + i·s)/i; at rate 0, -(PV + FV)/PMT. Source: money-10.</remarks>
    public static double Nper(
        double ratePerPeriod, double payment, double presentValue, double futureValue = 0, PaymentTiming timing = PaymentTiming.PeriodEnd)
    {
        var rate = Rate.AskedPerPeriod(ratePerPeriod);
        Require.Finite(payment);
        var missing = -(Require.Finite(presentValue) + Require.Finite(futureValue));
        // z·((1 + i)ⁿ - 1) = -(FV + PV·(1 + i)ⁿ), solved for (1 + i)ⁿ - 1, which keeps its digits at small rates.
        var perPeriod = payment * (timing == PaymentTiming.PeriodStart ? 1 + rate : 1) + rate * presentValue;
        if (missing == 0) return 0;
        var growth = rate * missing / perPeriod;
        var periods = rate == 0 ? missing / perPeriod : growth > -1 ? Growth.LogOnePlus(growth) / Growth.LogOnePlus(rate) : double.NaN;
        return periods >= 0 && double.IsFinite(periods) ? periods : throw Throw.NeverRepaid(rate, payment, presentValue, futureValue);
    }

    /// <summary>Rate per period (RATE) that fits present value, payments and future value.</summary>
    /// <param name="periods">Number of payments. Range: 1 to 10,000.</param>
    /// <param name="payment">Payment per period; negative where it is paid.</param>
    /// <param name="presentValue">What is received (positive) or laid down (negative) at the start.</param>
    /// <param name="futureValue">What is received (positive) or paid (negative) with the last payment. Default: 0.</param>
    /// <param name="timing">Whether payments are made at the end or the start of a period.</param>
    /// <returns>The one rate per period, a fraction above -1.</returns>
    /// <exception cref="NoSingleRateException">No rate fits, or several do.</exception>
    /// <remarks>Equation: as for <see cref="Pmt"/>, solved as an internal rate of return. Source: money-10.</remarks>
    public static double RatePerPeriod(
        int periods, double payment, double presentValue, double futureValue = 0, PaymentTiming timing = PaymentTiming.PeriodEnd)
    {
        Require.Within(periods, 1, 10_000, "payments");
        var flow = new double[periods + 1];
        var first = timing == PaymentTiming.PeriodStart ? 0 : 1;
        for (var period = first; period < periods + first; period++) flow[period] = Require.Finite(payment);
        flow[0] += Require.Finite(presentValue);
        flow[periods] += Require.Finite(futureValue);
        return Irr(flow);
    }

    /// <summary>Interest paid in some payments of a loan with level payments at period ends (CUMIPMT).</summary>
    /// <param name="ratePerPeriod">Rate per period, a fraction. Range: above -1, below 1.</param>
    /// <param name="periods">Number of payments. Range: above 0.</param>
    /// <param name="presentValue">What is received at the start (positive).</param>
    /// <param name="first">First payment counted, from 1.</param>
    /// <param name="last">Last payment counted, this one included. Range: <paramref name="first"/> to <paramref name="periods"/>.</param>
    /// <returns>Interest; negative where it is paid.</returns>
    /// <remarks>Equation: all payments of the span less the principal in them. Source: money-10.</remarks>
    public static double InterestPaid(double ratePerPeriod, int periods, double presentValue, int first, int last) =>
        Pmt(ratePerPeriod, periods, presentValue) * (last - first + 1) - PrincipalPaid(ratePerPeriod, periods, presentValue, first, last);

    /// <summary>Principal paid back in some payments of a loan with level payments at period ends (CUMPRINC).</summary>
    /// <inheritdoc cref="InterestPaid"/>
    /// <returns>Principal; negative where it is paid.</returns>
    /// <remarks>Equation: the balance after the last counted payment less the balance before the first. Source: money-10.</remarks>
    public static double PrincipalPaid(double ratePerPeriod, int periods, double presentValue, int first, int last)
    {
        Require.Within(first, 1, periods, "payment, counted from 1");
        Require.Within(last, first, periods, "payment, not before the first");
        var payment = Pmt(ratePerPeriod, periods, presentValue);
        return Owed(ratePerPeriod, last, payment, presentValue) - Owed(ratePerPeriod, first - 1, payment, presentValue);
    }

    private static double Owed(double rate, int paid, double payment, double presentValue) =>
        paid == 0 ? presentValue : -Fv(rate, paid, payment, presentValue);

    private static double Grown(double rate, double periods) =>
        Math.Pow(1 + Rate.AskedPerPeriod(rate), Require.Within(periods, 1e-9, 1e5, "periods"));

    private static double Payments(double rate, double periods, PaymentTiming timing) =>
        Growth.SumOfPowers(rate, periods) * (timing == PaymentTiming.PeriodStart ? 1 + rate : 1);
}
