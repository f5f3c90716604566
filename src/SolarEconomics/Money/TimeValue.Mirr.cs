namespace SolarEconomics;

public static partial class TimeValue
{
    /// <summary>Modified internal rate of return (MIRR) of yearly amounts.</summary>
    /// <param name="flow">Amount per year, year 0 first. Shape: 2 values or more, finite, with a payment and a return.</param>
    /// <param name="financeRate">Rate at which payments are financed, per year, a fraction. Range: above -1, below 1.</param>
    /// <param name="reinvestRate">Rate at which returns are put to work until the end, per year, a fraction. Range: above -1, below 1.</param>
    /// <returns>The rate per year, a fraction; there is always exactly one.</returns>
    /// <exception cref="ArgumentException">All amounts have one sign, or there is only one amount.</exception>
    /// <remarks>Equation: (FV of returns at the reinvestment rate / PV of payments at the finance rate)^(1/n) - 1. Source: money-9.</remarks>
    public static double Mirr(ReadOnlySpan<double> flow, double financeRate, double reinvestRate)
    {
        Finite(flow);
        var (finance, reinvest) = (1 / (1 + Rate.Asked(financeRate)), 1 / (1 + Rate.Asked(reinvestRate)));
        double paid = 0, received = 0;
        for (var year = flow.Length - 1; year >= 0; year--)
        {
            paid = paid * finance + Math.Max(0, -flow[year]);
            received = received * reinvest + Math.Max(0, flow[year]);
        }
        var years = flow.Length - 1;
        if (paid == 0 || received == 0 || years == 0) throw Throw.NoMirr(paid, received, years);
        // Both sums stand at year 0; the received one is moved to the end at its own rate.
        return Math.Pow(received / paid, 1.0 / years) * (1 + reinvestRate) - 1;
    }

    /// <summary>Modified internal rate of return (MIRR) of a yearly flow of money.</summary>
    /// <param name="flow">Amounts per year, year 0 first, with a payment and a return.</param>
    /// <param name="financeRate">Rate at which payments are financed, of the flow's basis.</param>
    /// <param name="reinvestRate">Rate at which returns are put to work until the end, of the flow's basis.</param>
    /// <returns>The rate per year; nominal for a nominal flow, real for a real one.</returns>
    /// <exception cref="BasisMismatchException">A rate is real and the flow nominal, or the reverse.</exception>
    /// <remarks>Source: money-9.</remarks>
    public static Rate Mirr(MoneyFlow flow, Rate financeRate, Rate reinvestRate)
    {
        var (finance, reinvest) = (RateOf(flow, financeRate), RateOf(flow, reinvestRate));
        return Rate.Solved(Mirr(flow.Span, finance, reinvest), !flow.Basis.IsNominal);
    }
}
