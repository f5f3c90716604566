namespace SolarEconomics;

/// <summary>What a number of draws gave for one quantity, in the order drawn, with how far each figure is off by chance.</summary>
/// <remarks>Immutable, so safe to share between threads. Sums run in the order of the draws: the same on any number of threads.</remarks>
public sealed class DrawnValues
{
    private readonly double[] _values;
    private readonly Lazy<double[]> _sorted;

    internal DrawnValues(double[] values, int count)
    {
        _values = values;
        Count = count;
        Mean = Statistics.MeanOf(values.AsSpan(0, count));
        _sorted = new Lazy<double[]>(() =>
        {
            var sorted = values.AsSpan(0, count).ToArray();
            Array.Sort(sorted);
            return sorted;
        });
    }

    /// <summary>Number of draws.</summary>
    public int Count { get; }

    /// <summary>Mean of the draws.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of the draws.</summary>
    public double Sd => Statistics.StandardDeviation(Values);

    /// <summary>How far the mean is off by chance. Equation: σ / √n. Source: stat-1.</summary>
    public double StandardError => SamplingError.OfMean(Sd, Count);

    /// <summary>The values in the order drawn.</summary>
    public ReadOnlySpan<double> Values => _values.AsSpan(0, Count);

    internal ReadOnlySpan<double> Sorted => _sorted.Value;

    /// <summary>Value below which a share of the draws lies.</summary>
    /// <param name="share">Share of draws below. Range: 0 to 1.</param>
    public double Percentile(double share) => Statistics.PercentileOfSorted(Sorted, Require.Fraction(share));

    /// <summary>How far a percentile is off by chance.</summary>
    /// <param name="share">Share of draws below. Range: 0 to 1.</param>
    /// <remarks>Equation: (Q(p + s) − Q(p − s)) / 2 with s = √(p (1 − p) / n), the spread of its rank. Source: stat-9.</remarks>
    public double StandardErrorOfPercentile(double share)
    {
        var spread = ChanceError(Require.Fraction(share));
        return (Percentile(Math.Min(1, share + spread)) - Percentile(Math.Max(0, share - spread))) / 2;
    }

    /// <summary>Share of draws at or above a value.</summary>
    /// <param name="value">The value, in the unit of the draws.</param>
    public double ShareAtLeast(double value)
    {
        var (low, high) = (0, Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (Sorted[middle] < value) low = middle + 1;
            else high = middle;
        }
        return (double)(Count - low) / Count;
    }

    /// <summary>How far a share of draws is off by chance. Equation: √(p (1 − p) / n).</summary>
    /// <param name="share">The share. Range: 0 to 1.</param>
    public double ChanceError(double share) => Math.Sqrt(Require.Fraction(share) * (1 - share) / Count);
}
