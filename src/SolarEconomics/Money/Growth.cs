namespace SolarEconomics;

/// <summary>Powers and logarithms near 1 without losing digits: a rate of 1e-10 must not become 0 by rounding 1 + r.</summary>
/// <remarks>Kahan's way: the rounding error of 1 + x stands in both factors and cancels. Source: money-8.</remarks>
internal static class Growth
{
    /// <summary>ln(1 + x).</summary>
    internal static double LogOnePlus(double x)
    {
        var sum = 1 + x;
        return sum == 1 ? x : Math.Log(sum) * (x / (sum - 1));
    }

    /// <summary>exp(x) - 1.</summary>
    internal static double ExpMinusOne(double x)
    {
        var power = Math.Exp(x);
        if (power == 1) return x;
        var less = power - 1;
        return less == -1 || double.IsInfinity(power) ? less : less * (x / Math.Log(power));
    }

    /// <summary>(1 + r)ⁿ - 1.</summary>
    internal static double OverPeriods(double rate, double periods) => ExpMinusOne(periods * LogOnePlus(rate));

    /// <summary>Σ (1 + r)ᵏ for k from 0 to n - 1, in closed form; n where the rate is 0.</summary>
    internal static double SumOfPowers(double rate, double periods) => rate == 0 ? periods : OverPeriods(rate, periods) / rate;
}
