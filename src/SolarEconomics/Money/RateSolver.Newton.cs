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

    /// <summary>The factor at which all that is received, moved to its mean time, pays for all that is paid, moved to its mean time.</summary>
    private static double StartingFactor(ReadOnlySpan<double> flow)
    {
        double paid = 0, received = 0, paidYears = 0, receivedYears = 0;
        for (var year = 0; year < flow.Length; year++)
        {
            var amount = flow[year];
            if (amount < 0)
            {
                paid -= amount;
                paidYears -= amount * year;
            }
            else
            {
                received += amount;
                receivedYears += amount * year;
            }
        }
        var years = receivedYears / received - paidYears / paid;
        return Math.Pow(paid / received, 1 / years);
    }
}
