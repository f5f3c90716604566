using NodaTime;

namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>Net present value (NPV) of yearly amounts; the first is now and is not discounted.</summary>
    /// <param name="flow">Amount per year, year 0 first. Shape: 1 value or more, finite.</param>
    /// <param name="rate">Discount rate per year, a fraction. Range: above -1, below 1.</param>
    /// <returns>Value at the start of year 0, in the unit of the amounts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate would be asked back, or an amount is not finite.</exception>
    /// <remarks>Equation: NPV = Σₜ Fₜ / (1 + r)ᵗ. Source: money-2.</remarks>
    public static double Npv(ReadOnlySpan<double> flow, double rate) => Discounted(Finite(flow), Rate.Asked(rate));

    /// <summary>Net present value (NPV) at a rate of any size, such as a solver's root.</summary>
    /// <inheritdoc cref="Npv(ReadOnlySpan{double}, double)"/>
    public static double Npv(ReadOnlySpan<double> flow, Rate rate) => Discounted(Finite(flow), rate.PerYear);

    /// <summary>Net present value (NPV) of a yearly flow of money; year 0 is not discounted.</summary>
    /// <param name="flow">Amounts per year, year 0 first.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <returns>Value at the start of year 0, in the flow's currency and basis.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: NPV = Σₜ Fₜ / (1 + r)ᵗ. Source: money-2.</remarks>
    public static Money Npv(MoneyFlow flow, Rate rate) => flow.InMoney(Discounted(flow, rate));

    /// <summary>Net present value where even the first amount is paid at the end of its year.</summary>
    /// <param name="flow">Amount per year, paid at the ends of years 1, 2, … Shape: 1 value or more, finite.</param>
    /// <param name="rate">Discount rate per year, a fraction. Range: above -1, below 1.</param>
    /// <returns>Value at the start of year 1, in the unit of the amounts.</returns>
    /// <remarks>Equation: Σₖ Fₖ / (1 + r)ᵏ, k from 1. Many spreadsheets call this one NPV. Source: money-2.</remarks>
    public static double NpvOfYearEnds(ReadOnlySpan<double> flow, double rate) => Npv(flow, rate) / (1 + rate);

    /// <summary>Net present value of a yearly flow of money where even the first amount is paid at the end of its year.</summary>
    /// <param name="flow">Amount per year, paid at the ends of years 1, 2, …</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <returns>Value at the start of year 1, in the flow's currency and basis.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: Σₖ Fₖ / (1 + r)ᵏ, k from 1. Source: money-2.</remarks>
    public static Money NpvOfYearEnds(MoneyFlow flow, Rate rate) => flow.InMoney(Discounted(flow, rate) / (1 + rate.PerYear));

    /// <summary>Net present value where the first amount is now and the others fall in the middle of their years.</summary>
    /// <param name="flow">Amount now, then of years 1, 2, … Shape: 1 value or more, finite.</param>
    /// <param name="rate">Discount rate per year, a fraction. Range: above -1, below 1.</param>
    /// <returns>Value now, in the unit of the amounts.</returns>
    /// <remarks>Equation: F₀ + Σₜ Fₜ / (1 + r)^(t - ½). Source: money-2.</remarks>
    public static double NpvOfMidYears(ReadOnlySpan<double> flow, double rate)
    {
        var all = Npv(flow, rate);
        return InMidYears(flow[0], all, rate);
    }

    /// <summary>Half a year earlier for all but the first amount.</summary>
    private static double InMidYears(double first, double all, double rate) => first + (all - first) * Math.Sqrt(1 + rate);

    /// <summary>Net present value of a yearly flow of money where the first amount is now and the others fall in the middle of their years.</summary>
    /// <param name="flow">Amount now, then of years 1, 2, …</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <returns>Value now, in the flow's currency and basis.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: F₀ + Σₜ Fₜ / (1 + r)^(t - ½). Source: money-2.</remarks>
    public static Money NpvOfMidYears(MoneyFlow flow, Rate rate)
    {
        var all = Discounted(flow, rate);
        return flow.InMoney(InMidYears(flow.Span[0], all, rate.PerYear));
    }

    /// <summary>Net present value of dated amounts (XNPV) at the first date.</summary>
    /// <param name="amounts">Amounts, finite. Shape: 1 value or more.</param>
    /// <param name="dates">Date of each amount, earliest first.</param>
    /// <param name="rate">Discount rate per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="count">How days become years. Default: actual days over 365, as is usual for XNPV.</param>
    /// <returns>Value at the first date, in the unit of the amounts.</returns>
    /// <exception cref="ArgumentException">Lengths differ, or the dates are not in order.</exception>
    /// <remarks>Equation: XNPV = Σₖ Fₖ / (1 + r)^τₖ, τₖ the years since the first date. Source: money-5.</remarks>
    public static double Xnpv(
        ReadOnlySpan<double> amounts, ReadOnlySpan<LocalDate> dates, double rate, DayCount count = DayCount.Actual365)
    {
        var (values, years) = Timed(amounts, dates, count);
        return RateSolver.ValueAt(values, years, Rate.Asked(rate));
    }

    /// <summary>Net present value of dated payments (XNPV) at the first date.</summary>
    /// <param name="flow">The payments.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>Value at the first date, in the flow's currency and basis.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: XNPV = Σₖ Fₖ / (1 + r)^τₖ. Source: money-5.</remarks>
    public static Money Xnpv(DatedMoneyFlow flow, Rate rate, DayCount count = DayCount.Actual365)
    {
        var perYear = RateOf(flow, rate);
        var (values, years) = Timed(flow, count);
        return flow.InMoney(RateSolver.ValueAt(values, years, perYear));
    }

    /// <summary>The flow's value at the start of year 0. A missing flow and a rate of the other basis are refused here, for all measures of a flow of money.</summary>
    private static double Discounted(MoneyFlow flow, Rate rate)
    {
        var perYear = RateOf(flow, rate);
        return Discounted(flow.Span, perYear);
    }

    /// <summary>Horner's rule from the last year to the first: one multiplication a year, no power.</summary>
    private static double Discounted(ReadOnlySpan<double> flow, double rate)
    {
        var factor = 1 / (1 + rate);
        var value = 0.0;
        for (var year = flow.Length - 1; year >= 0; year--) value = Math.FusedMultiplyAdd(value, factor, flow[year]);
        return double.IsFinite(value) ? value : throw Throw.NoFiniteValue(rate);
    }
}
