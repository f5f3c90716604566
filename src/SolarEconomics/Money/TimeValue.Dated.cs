using NodaTime;

namespace SolarEconomics;

/// <content>Rates, level amounts and discounted payback of dated payments: as those of yearly flows, with years told by a day count.</content>
public static partial class TimeValue
{
    /// <summary>Modified internal rate of return (MIRR) of dated payments.</summary>
    /// <param name="flow">The payments, on two days or more, with a payment and a return. Each counts by its own sign.</param>
    /// <param name="financeRate">Rate at which payments are financed, of the flow's basis.</param>
    /// <param name="reinvestRate">Rate at which returns are put to work until the last day, of the flow's basis.</param>
    /// <param name="count">How days become years. Default: actual days over 365, as for XIRR.</param>
    /// <returns>The effective rate per year; nominal for a nominal flow, real for a real one.</returns>
    /// <exception cref="BasisMismatchException">A rate is real and the flow nominal, or the reverse.</exception>
    /// <exception cref="ArgumentException">All payments have one sign, or fall on one day.</exception>
    /// <remarks>Equation: (FV of returns at the reinvestment rate / PV of payments at the finance rate)^(1/τ) - 1, τ the years from the first day to the last.
    /// Source: money-9, its years told by days.</remarks>
    public static Rate Mirr(DatedMoneyFlow flow, Rate financeRate, Rate reinvestRate, DayCount count = DayCount.Actual365)
    {
        var (finance, reinvest) = (RateOf(flow, financeRate), RateOf(flow, reinvestRate));
        var (amounts, years) = Timed(flow, count);
        var paid = RateSolver.ValueAt(Array.ConvertAll(amounts, a => Math.Max(0, -a)), years, finance);
        var received = RateSolver.ValueAt(Array.ConvertAll(amounts, a => Math.Max(0, a)), years, reinvest);
        if (years[^1] == 0) throw Throw.OneDayOnly(flow.FirstDate);
        if (paid == 0 || received == 0) throw Throw.NoMirr(paid, received, years[^1]);
        return Rate.Solved(Math.Pow(received / paid, 1 / years[^1]) * (1 + reinvest) - 1, !flow.Basis.IsNominal);
    }

    /// <summary>Equivalent annual worth of dated payments over their own life, from the first day to the last.</summary>
    /// <param name="flow">The payments, on two days or more.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>Level amount at the end of each year, in the flow's currency and basis; a part of a year counts as the capital recovery factor does.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <exception cref="ArgumentException">All payments fall on one day.</exception>
    /// <remarks>Equation: XNPV · r / (1 - (1 + r)^-τ), τ the years from the first day to the last. Source: money-2, its years told by days.</remarks>
    public static Money EquivalentAnnualWorth(DatedMoneyFlow flow, Rate rate, DayCount count = DayCount.Actual365)
    {
        var perYear = RateOf(flow, rate);
        var (amounts, years) = Timed(flow, count);
        if (years[^1] == 0) throw Throw.OneDayOnly(flow.FirstDate);
        return flow.InMoney(RateSolver.ValueAt(amounts, years, perYear) / LevelWorth(perYear, years[^1]));
    }

    /// <summary>Discounted payback of dated payments: the first and the lasting day on which the running sum of present values is 0 or above.</summary>
    /// <param name="flow">The payments.</param>
    /// <param name="rate">Discount rate per year, nominal for a nominal flow and real for a real one.</param>
    /// <param name="count">How days become years. Default: actual days over 365.</param>
    /// <returns>Days and the sum at the end, which is the net present value at the first day; nothing is interpolated between payments.</returns>
    /// <exception cref="BasisMismatchException">The rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Equation: the payback of Fₖ / (1 + r)^τₖ. All payments of a day count before the sum is judged. Source: money-7, its years told by days.</remarks>
    public static PaybackDates DiscountedPayback(DatedMoneyFlow flow, Rate rate, DayCount count = DayCount.Actual365)
    {
        var perYear = RateOf(flow, rate);
        var (amounts, years) = Timed(flow, count);
        var discounted = amounts.Select((amount, i) => new DatedAmount(flow.Amounts[i].Date, Throw.IfTooLarge(amount * Math.Pow(1 + perYear, -years[i]))));
        return Payback(DatedMoneyFlow.InOrder(flow.Currency, flow.Basis, discounted)) with { DiscountRate = rate, DaysCounted = count };
    }
}
