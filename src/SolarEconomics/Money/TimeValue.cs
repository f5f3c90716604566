using NodaTime;

namespace SolarEconomics;

/// <summary>The time value of money: present values, rates of return, payback, loans, levelised and life-cycle cost.</summary>
/// <remarks>
/// <para>Every method is pure and safe between threads. Names are the trade's abbreviations; the full term is in each summary.</para>
/// <para>Signs: positive is received, negative is paid. Year 0 is now and is not discounted, unless a name says otherwise.
/// Rates are effective per year and fractions (0.05 is 5 %); 5 is asked back. Plain arrays carry no price basis: rate and
/// amounts must both be nominal or both be real, and whoever wants that checked uses <see cref="MoneyFlow"/> and <see cref="Rate"/>.</para>
/// <para>Results are arithmetic, not tax, credit or investment advice.</para>
/// </remarks>
public static partial class TimeValue
{
    private static double RateOf(MoneyFlow flow, Rate rate)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return flow.Basis.IsNominal == !rate.IsReal ? rate.PerYear : throw Throw.BasisMismatch(flow.Basis, rate);
    }

    private static double RateOf(DatedMoneyFlow flow, Rate rate)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return flow.Basis.IsNominal == !rate.IsReal ? rate.PerYear : throw Throw.BasisMismatch(flow.Basis, rate);
    }

    private static ReadOnlySpan<double> Finite(ReadOnlySpan<double> flow)
    {
        if (flow.IsEmpty) throw Throw.EmptyFlow();
        for (var i = 0; i < flow.Length; i++)
        {
            if (!double.IsFinite(flow[i])) throw Throw.NotFinite(flow[i], i);
        }
        return flow;
    }

    private static (double[] Amounts, double[] Years) Timed(ReadOnlySpan<double> amounts, ReadOnlySpan<LocalDate> dates, DayCount count)
    {
        Finite(amounts);
        if (amounts.Length != dates.Length) throw Throw.UnequalLengths(amounts.Length, dates.Length);
        var years = new double[dates.Length];
        for (var i = 1; i < dates.Length; i++)
        {
            if (dates[i] < dates[i - 1])
            {
                throw Throw.OutOfOrder(new DatedAmount(dates[i - 1], 0), new DatedAmount(dates[i], 0));
            }
            years[i] = YearFraction(dates[0], dates[i], count);
        }
        return (amounts.ToArray(), years);
    }

    private static (double[] Amounts, double[] Years) Timed(DatedMoneyFlow flow, DayCount count)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return Timed([.. flow.Amounts.Select(a => (double)a.Amount)], [.. flow.Amounts.Select(a => a.Date)], count);
    }
}
