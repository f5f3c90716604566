namespace SolarEconomics;

/// <summary>Finds where a function of one input crosses 0: looks along its range, then halves each piece that changes sign.</summary>
internal static class ZeroSearch
{
    private const int Looks = 33;

    /// <summary>Every crossing that the looks can tell apart, lowest first, and the values at both ends.</summary>
    internal static (IReadOnlyList<double> Zeros, double AtLow, double AtHigh) Along(DeclaredRange range, Func<double, double> value)
    {
        var at = range.Steps(Looks);
        var values = Array.ConvertAll(at, x => value(x));
        var zeros = new List<double>();
        for (var i = 0; i < Looks; i++)
        {
            if (values[i] == 0) zeros.Add(at[i]);
            else if (i > 0 && values[i - 1] != 0 && (values[i] > 0) != (values[i - 1] > 0)) zeros.Add(Between(at[i - 1], values[i - 1], at[i], value));
        }
        return (zeros, values[0], values[^1]);
    }

    /// <summary>Illinois' rule: a secant that never loses its bracket and halves the weight of an end that stays.</summary>
    private static double Between(double low, double atLow, double high, Func<double, double> value)
    {
        var atHigh = value(high);
        var side = 0;
        for (var step = 0; step < 200 && Math.Abs(high - low) > 1e-12 * (1 + Math.Abs(low) + Math.Abs(high)); step++)
        {
            var middle = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            if (!(middle > Math.Min(low, high) && middle < Math.Max(low, high))) middle = (low + high) / 2;
            var found = value(middle);
            if (found == 0) return middle;
            if ((found > 0) == (atHigh > 0))
            {
                (high, atHigh) = (middle, found);
                if (side == -1) atLow /= 2;
                side = -1;
            }
            else
            {
                (low, atLow) = (middle, found);
                if (side == 1) atHigh /= 2;
                side = 1;
            }
        }
        return (low + high) / 2;
    }
}
