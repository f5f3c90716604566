namespace SolarEconomics;

internal static partial class RateSolver
{
    /// <summary>The usual flow, paid first and received later, has one sign change and so one rate: Newton's method on v = 1/(1 + r).</summary>
    /// <returns>False where another way must decide: no or several sign changes, a step out of v &gt; 0, or no quick end.</returns>
    /// <remarks>Value and slope come together by Horner's rule; nothing is allocated.</remarks>
    internal static bool TryNewton(ReadOnlySpan<double> flow, out double rate)
    {
        rate = 0;
        if (!HasOneSignChange(flow)) return false;
        var v = StartingFactor(flow);
        for (var step = 0; step < 40; step++)
        {
            double value = 0, slope = 0;
            for (var year = flow.Length - 1; year >= 0; year--)
            {
                slope = Math.FusedMultiplyAdd(slope, v, value);
                value = Math.FusedMultiplyAdd(value, v, flow[year]);
            }
            var change = value / slope;
            v -= change;
            // Written so that NaN (0/0, overflow) fails too.
            if (!(v > 0 && v < 1e300)) return false;
            // Newton doubles the right digits each time: after a change below 1e-9 the next would be below rounding.
            if (Math.Abs(change) < 1e-9 * v)
            {
                rate = 1 / v - 1;
                return rate > -1;
            }
        }
        return false;
    }

    private static bool HasOneSignChange(ReadOnlySpan<double> flow)
    {
        var changes = 0;
        var last = 0.0;
        foreach (var amount in flow)
        {
            if (amount == 0) continue;
            if (last * amount < 0) changes++;
            last = amount < 0 ? -1 : 1;
        }
        return changes == 1;
    }

    /// <summary>A first guess: all that is paid and all that is received, each at its mean time, grow into each other at about this rate.</summary>
    /// <remarks>ln(received/paid) is taken as 2(received - paid)/(received + paid): near enough to start from, and no power or logarithm.</remarks>
    private static double StartingFactor(ReadOnlySpan<double> flow)
    {
        double paid = 0, received = 0, paidYears = 0, receivedYears = 0;
        for (var year = 0; year < flow.Length; year++)
        {
            var (plus, minus) = (Math.Max(flow[year], 0), Math.Max(-flow[year], 0));
            received += plus;
            paid += minus;
            receivedYears += plus * year;
            paidYears += minus * year;
        }
        var years = receivedYears / received - paidYears / paid;
        var growth = 2 * (received - paid) / ((received + paid) * years);
        return growth < 0 ? 1 - growth : 1 / (1 + growth);
    }
}
