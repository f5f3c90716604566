using NodaTime;

namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>Internal rate of return (IRR) of yearly amounts.</summary>
    /// <param name="flow">Amount per year, year 0 first. Shape: 1 value or more, finite.</param>
    /// <returns>The one rate per year, a fraction above -1, at which the net present value is 0.</returns>
    /// <exception cref="NoSingleRateException">There is no such rate, or there are several; the message gives the numbers.</exception>
    /// <remarks>It never ranks exclusive options. Source: money-2.</remarks>
    public static double Irr(ReadOnlySpan<double> flow)
    {
        if (RateSolver.TryNewton(Finite(flow), out var rate)) return rate;
        return TryIrr(flow, out var result) ? result.Roots[0].PerYear : throw Throw.NoSingleRate(flow, result, "");
    }

    /// <summary>Internal rate of return (IRR) of yearly amounts, with how the search ended.</summary>
    /// <param name="flow">Amount per year, year 0 first. Shape: 1 value or more, finite.</param>
    /// <param name="result">Every rate found, and how the search ended. Rates of plain numbers are marked nominal.</param>
    /// <returns>Whether there is exactly one rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No amount, or one that is not finite.</exception>
    /// <remarks>Source: money-2; all roots by repeated differentiation, money-6.</remarks>
    public static bool TryIrr(ReadOnlySpan<double> flow, out IrrResult result)
    {
        result = RateSolver.Solve(Finite(flow).ToArray(), RateSolver.WholeYears(flow.Length), isReal: false);
        return result.End == SolveEnd.Root;
    }

    /// <summary>Internal rate of return (IRR) of a yearly flow of money.</summary>
    /// <param name="flow">Amounts per year, year 0 first.</param>
    /// <returns>The one rate per year; nominal for a nominal flow, real for a real one.</returns>
    /// <exception cref="NoSingleRateException">There is no such rate, or there are several; the message gives the numbers.</exception>
    /// <remarks>It never ranks exclusive options. Source: money-2.</remarks>
    public static Rate Irr(MoneyFlow flow) =>
        TryIrr(flow, out var result) ? result.Roots[0] : throw Throw.NoSingleRate(flow.Span, result, " " + flow.Currency);

    /// <summary>Internal rate of return (IRR) of a yearly flow of money, with how the search ended.</summary>
    /// <param name="flow">Amounts per year, year 0 first.</param>
    /// <param name="result">Every rate found, and how the search ended.</param>
    /// <returns>Whether there is exactly one rate.</returns>
    /// <remarks>Source: money-2, money-6.</remarks>
    public static bool TryIrr(MoneyFlow flow, out IrrResult result)
    {
        ArgumentNullException.ThrowIfNull(flow);
        result = RateSolver.Solve(flow.Span.ToArray(), RateSolver.WholeYears(flow.Span.Length), !flow.Basis.IsNominal);
        return result.End == SolveEnd.Root;
    }

    /// <summary>Rate of return of dated amounts (XIRR).</summary>
    /// <param name="amounts">Amounts, finite. Shape: 1 value or more.</param>
    /// <param name="dates">Date of each amount, earliest first.</param>
    /// <param name="count">How days become years. Default: actual days over 365, as is usual for XIRR.</param>
    /// <returns>The one effective rate per year, a fraction above -1, at which the value is 0.</returns>
    /// <exception cref="NoSingleRateException">There is no such rate, or there are several; the message gives the numbers.</exception>
    /// <remarks>Source: money-5.</remarks>
    public static double Xirr(ReadOnlySpan<double> amounts, ReadOnlySpan<LocalDate> dates, DayCount count = DayCount.Actual365) =>
        TryXirr(amounts, dates, out var result, count) ? result.Roots[0].PerYear : throw Throw.NoSingleRate(amounts, result, "");

    /// <summary>Rate of return of dated amounts (XIRR), with how the search ended.</summary>
    /// <param name="amounts">Amounts, finite. Shape: 1 value or more.</param>
    /// <param name="dates">Date of each amount, earliest first.</param>
    /// <param name="result">Every rate found, and how the search ended. Rates of plain numbers are marked nominal.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>Whether there is exactly one rate.</returns>
    /// <remarks>Source: money-5, money-6.</remarks>
    public static bool TryXirr(
        ReadOnlySpan<double> amounts, ReadOnlySpan<LocalDate> dates, out IrrResult result, DayCount count = DayCount.Actual365)
    {
        var (values, years) = Timed(amounts, dates, count);
        result = RateSolver.Solve(values, years, isReal: false);
        return result.End == SolveEnd.Root;
    }

    /// <summary>Rate of return of dated payments (XIRR).</summary>
    /// <param name="flow">The payments.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>The one effective rate per year; nominal for a nominal flow, real for a real one.</returns>
    /// <exception cref="NoSingleRateException">There is no such rate, or there are several; the message gives the numbers.</exception>
    /// <remarks>Of a plant that still works it treats the plant as worthless today: show it with a resale value too. Source: money-5.</remarks>
    public static Rate Xirr(DatedMoneyFlow flow, DayCount count = DayCount.Actual365) =>
        TryXirr(flow, out var result, count)
            ? result.Roots[0]
            : throw Throw.NoSingleRate([.. flow.Amounts.Select(a => (double)a.Amount)], result, " " + flow.Currency);

    /// <summary>Rate of return of dated payments (XIRR), with how the search ended.</summary>
    /// <param name="flow">The payments.</param>
    /// <param name="result">Every rate found, and how the search ended.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>Whether there is exactly one rate.</returns>
    /// <remarks>Source: money-5, money-6.</remarks>
    public static bool TryXirr(DatedMoneyFlow flow, out IrrResult result, DayCount count = DayCount.Actual365)
    {
        var (values, years) = Timed(flow, count);
        result = RateSolver.Solve(values, years, !flow.Basis.IsNominal);
        return result.End == SolveEnd.Root;
    }
}
