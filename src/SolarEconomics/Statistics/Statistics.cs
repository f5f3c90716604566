namespace SolarEconomics;

/// <summary>Figures that sum up a set of values. All are two-pass, so values far from zero lose no digits.</summary>
/// <remarks>Thread-safe: there is no state.</remarks>
public static class Statistics
{
    /// <summary>Mean.</summary>
    /// <param name="values">At least one finite value.</param>
    /// <exception cref="ArgumentException">There are too few values, or one is not finite.</exception>
    public static double Mean(ReadOnlySpan<double> values)
    {
        Checked(values, atLeast: 1);
        return MeanOf(values);
    }

    /// <summary>Standard deviation of a sample: the sum of squares is divided by n − 1.</summary>
    /// <param name="values">At least two finite values.</param>
    /// <exception cref="ArgumentException">There are too few values, or one is not finite.</exception>
    public static double StandardDeviation(ReadOnlySpan<double> values)
    {
        Checked(values, atLeast: 2);
        return Math.Sqrt(SquaresAround(values, MeanOf(values)) / (values.Length - 1));
    }

    /// <summary>Autocorrelation: how alike values are to those <paramref name="lag"/> places earlier. Range: −1 to 1.</summary>
    /// <param name="values">Values at equal distances, more than <paramref name="lag"/> + 1, not all alike.</param>
    /// <param name="lag">Places apart. Range: 1 or more. Default: 1.</param>
    /// <remarks>Equation: Σ (yᵢ − ȳ)(yᵢ₊ₗ − ȳ) / Σ (yᵢ − ȳ)². Source: stat-1.</remarks>
    /// <exception cref="ArgumentException">There are too few values, one is not finite, or all are alike.</exception>
    public static double Autocorrelation(ReadOnlySpan<double> values, int lag = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lag, 1);
        Checked(values, atLeast: lag + 2);
        var mean = MeanOf(values);
        var squares = SquaresAround(values, mean);
        if (squares == 0) throw Throw.AllAlike(values[0], values.Length);
        var products = 0.0;
        for (var i = lag; i < values.Length; i++) products += (values[i] - mean) * (values[i - lag] - mean);
        return products / squares;
    }

    /// <summary>Percentile by linear interpolation between the two nearest ranks (type 7).</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    /// <param name="share">Share of the values below. Range: 0 to 1; 0.5 is the median.</param>
    /// <remarks>Equation: h = (n − 1) p; xₕ between the sorted values ⌊h⌋ and ⌊h⌋ + 1, counted from 0. Source: stat-2.</remarks>
    /// <exception cref="ArgumentException">There are too few values, or one is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static double Percentile(ReadOnlySpan<double> values, double share)
    {
        Checked(values, atLeast: 1);
        Require.Fraction(share);
        var sorted = values.ToArray();
        Array.Sort(sorted);
        return PercentileOfSorted(sorted, share);
    }

    /// <summary>Median: half of the values lie below.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    /// <exception cref="ArgumentException">There are too few values, or one is not finite.</exception>
    public static double Median(ReadOnlySpan<double> values) => Percentile(values, 0.5);

    internal static double PercentileOfSorted(ReadOnlySpan<double> sorted, double share)
    {
        var h = (sorted.Length - 1) * share;
        var below = (int)Math.Floor(h);
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((h - below) * (sorted[above] - sorted[below]));
    }

    internal static void Checked(ReadOnlySpan<double> values, int atLeast)
    {
        if (values.Length < atLeast) throw Throw.TooFewValues(values.Length, atLeast);
        for (var i = 0; i < values.Length; i++)
            if (!double.IsFinite(values[i])) throw Throw.ValueNotFinite(values[i], i);
    }

    /// <summary>A second pass over the differences takes out what the first sum rounded away.</summary>
    internal static double MeanOf(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values) sum += value;
        var mean = sum / values.Length;
        var rest = 0.0;
        foreach (var value in values) rest += value - mean;
        return mean + (rest / values.Length);
    }

    private static double SquaresAround(ReadOnlySpan<double> values, double mean)
    {
        var (squares, rest) = (0.0, 0.0);
        foreach (var value in values)
        {
            var d = value - mean;
            squares += d * d;
            rest += d;
        }
        return squares - (rest * rest / values.Length);
    }
}
