namespace SolarEconomics;

/// <summary>Finds every rate of return of a flow. Terms are amounts a with times t in years, ascending.</summary>
/// <remarks>
/// The value is f(x) = Σ a·exp(-t·x) with x = ln(1 + r), so every rate above -100 % is a real x.
/// Descartes' rule holds for such sums: there are never more roots than sign changes, and multiplying by exp(μx), with μ
/// between the two times of one sign change, then differentiating gives a sum with exactly one sign change fewer. Its roots
/// part the line into pieces on which exp(μx)·f is monotone, so each piece holds at most one root, found by its ends' signs.
/// No grid is scanned, hence no pair of roots can hide between two grid points. Source: money-6.
/// </remarks>
internal static partial class RateSolver
{
    /// <summary>Steps allowed in one bracket; halving alone needs about 1,100 for the whole range of x.</summary>
    private const int MostSteps = 2_000;

    /// <summary>Sign changes squared × payments: about how long finding every root takes. At this limit it is a few seconds.</summary>
    private const long MostWork = 20_000_000;

    internal static double[] WholeYears(int count)
    {
        var years = new double[count];
        for (var i = 0; i < count; i++) years[i] = i;
        return years;
    }

    /// <summary>Net value at a rate, for times that need not be whole years.</summary>
    internal static double ValueAt(ReadOnlySpan<double> amounts, ReadOnlySpan<double> years, double rate)
    {
        var sum = 0.0;
        for (var i = 0; i < amounts.Length; i++) sum += amounts[i] * Math.Pow(1 + rate, -years[i]);
        return double.IsFinite(sum) ? sum : throw Throw.NoFiniteValue(rate);
    }

    internal static IrrResult Solve(double[] amounts, double[] years, bool isReal)
    {
        var terms = Terms.Of(amounts, years);
        // A daily record that changes sign every day would keep the reader waiting for hours: said at once instead.
        if ((long)terms.SignChanges * terms.SignChanges * amounts.Length > MostWork)
        {
            return new IrrResult([], SolveEnd.NotConverged, 0, 0, terms.SignChanges);
        }
        var search = new Search();
        var roots = search.Roots(terms);
        var rates = new List<Rate>(roots.Count);
        var residual = 0.0;
        foreach (var x in roots)
        {
            var rate = Math.Exp(x) - 1;
            // Nearer to -100 % than a double can tell, or beyond the largest double: no rate that means anything.
            if (rate <= -1 || !double.IsFinite(rate)) continue;
            rate = Polish(terms, rate);
            residual = Math.Max(residual, Math.Abs(terms.ValueAtRate(rate)));
            rates.Add(Rate.Solved(rate, isReal));
        }
        rates.Sort((a, b) => a.PerYear.CompareTo(b.PerYear));
        var end = (search.Failed, terms.SignChanges, rates.Count) switch
        {
            (true, _, _) => SolveEnd.NotConverged,
            (_, 0, _) => SolveEnd.NoSignChange,
            (_, _, 0) => SolveEnd.NoRealRoot,
            (_, _, 1) => SolveEnd.Root,
            _ => SolveEnd.SeveralRoots,
        };
        return new IrrResult(rates, end, search.Steps, residual, terms.SignChanges);
    }

    /// <summary>One Newton step in the rate itself: exp(x) - 1 loses digits near 0 that the rate can hold.</summary>
    private static double Polish(Terms terms, double rate)
    {
        var (value, slope) = terms.ValueAndSlopeAtRate(rate);
        var better = rate - value / slope;
        return slope != 0 && better > -1 && Math.Abs(terms.ValueAtRate(better)) < Math.Abs(value) ? better : rate;
    }
}
