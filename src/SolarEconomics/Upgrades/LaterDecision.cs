namespace SolarEconomics;

/// <summary>Decides draw by draw from what is known: buys where a straight line fitted to the other half of the draws is above 0.</summary>
internal static class LaterDecision
{
    /// <summary>The worth of each draw where it is bought, else 0, and how often it is bought.</summary>
    /// <param name="known">What is known, one column per input.</param>
    /// <param name="worth">What buying is worth in each draw.</param>
    internal static (double[] Decided, double BuyShare) Of(IReadOnlyList<double[]> known, double[] worth)
    {
        var decided = new double[worth.Length];
        var bought = 0;
        // A rule fitted to the very draws it decides would know their luck: each half decides by the other.
        for (var half = 0; half < 2; half++)
        {
            var fit = Fit(known, worth, 1 - half);
            for (var i = half; i < worth.Length; i += 2)
            {
                if (fit(i) <= 0) continue;
                decided[i] = worth[i];
                bought++;
            }
        }
        return (decided, (double)bought / worth.Length);
    }

    private static Func<int, double> Fit(IReadOnlyList<double[]> known, double[] worth, int half)
    {
        double[] Half(double[] column) => [.. column.Where((_, i) => i % 2 == half)];
        var halves = known.Select(Half).ToList();
        // What is alike in all draws tells nothing.
        var telling = Enumerable.Range(0, known.Count).Where(k => halves[k].Max() > halves[k].Min()).ToList();
        var y = Half(worth);
        if (telling.Count == 0)
        {
            var mean = Statistics.MeanOf(y);
            return _ => mean;
        }
        var fit = RegressionFit.Of([.. telling.Select(k => halves[k])], y).Coefficients;
        return i => fit[0] + telling.Select((k, c) => fit[c + 1] * known[k][i]).Sum();
    }
}
