namespace SolarEconomics;

/// <summary>A few values, each with its odds: a grant that comes or not, one of three quotes.</summary>
public sealed record DiscreteDistribution : IDistribution
{
    private readonly (double Value, double Share)[] _cases;

    private DiscreteDistribution((double Value, double Share)[] cases) => _cases = cases;

    /// <summary>The values in ascending order with their shares.</summary>
    public IReadOnlyList<(double Value, double Share)> Cases => _cases;

    /// <summary>A distribution by its values and their shares.</summary>
    /// <param name="cases">Value and share of cases. Shares are above 0 and sum to 1.</param>
    /// <exception cref="ArgumentException">No case, a value that is not finite, a share not above 0, or shares that do not sum to 1.</exception>
    public static DiscreteDistribution Of(params ReadOnlySpan<(double Value, double Share)> cases)
    {
        var sum = 0.0;
        foreach (var (value, share) in cases)
        {
            if (!double.IsFinite(value) || !(share > 0)) throw Throw.NotACase(value, share);
            sum += share;
        }
        if (Math.Abs(sum - 1) > 1e-9) throw Throw.SharesNotWhole(sum);
        var sorted = cases.ToArray();
        Array.Sort(sorted, (a, b) => a.Value.CompareTo(b.Value));
        return new DiscreteDistribution(sorted);
    }

    /// <summary>Mean. Equation: Σ share · value.</summary>
    public double Mean => _cases.Sum(c => c.Share * c.Value);

    /// <summary>Standard deviation. Equation: √Σ share · (value − mean)².</summary>
    public double Sd
    {
        get
        {
            var mean = Mean;
            return Math.Sqrt(_cases.Sum(c => c.Share * (c.Value - mean) * (c.Value - mean)));
        }
    }

    /// <summary>The smallest value with at least a share of cases at or below it.</summary>
    /// <param name="share">Share of cases below. Range: 0 to 1.</param>
    public double Quantile(double share)
    {
        Require.Fraction(share);
        var below = 0.0;
        foreach (var (value, part) in _cases)
        {
            below += part;
            if (share <= below) return value;
        }
        return _cases[^1].Value;
    }

    /// <inheritdoc/>
    public bool Equals(DiscreteDistribution? other) => other is not null && _cases.AsSpan().SequenceEqual(other._cases);

    /// <inheritdoc/>
    public override int GetHashCode() => _cases.Aggregate(0, HashCode.Combine);
}
