using System.Numerics;

namespace SolarEconomics;

/// <summary>All 2ⁿ recomputations behind a bridge of n corrections: any subset can be on, the others stay at their straight-line value.</summary>
/// <remarks>Bit i of a subset is correction i. Equation of the Shapley part: Σ over S without i of |S|!·(n−|S|−1)!/n! · (v(S ∪ i) − v(S)).
/// Source: bridge-1.</remarks>
internal sealed class BridgeRuns
{
    private readonly decimal[] _values;

    /// <param name="corrections">Number of corrections, 0 to 8.</param>
    /// <param name="value">The result with the subset's corrections on.</param>
    internal BridgeRuns(int corrections, Func<uint, decimal> value)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(corrections, 8);
        Corrections = corrections;
        _values = new decimal[1 << corrections];
        for (var subset = 0u; subset < _values.Length; subset++) _values[subset] = value(subset);
    }

    internal int Corrections { get; }

    internal decimal Start => _values[0];

    internal decimal End => _values[^1];

    internal decimal Value(uint subset) => _values[subset];

    /// <summary>The parts in one order: each the difference of two full recomputations.</summary>
    /// <param name="order">Each correction once.</param>
    internal decimal[] Parts(IReadOnlyList<int> order)
    {
        var parts = new decimal[Corrections];
        var on = 0u;
        foreach (var i in order)
        {
            parts[i] = _values[on | (1u << i)] - _values[on];
            on |= 1u << i;
        }
        return parts;
    }

    internal decimal Shapley(int i)
    {
        var sum = 0m;
        foreach (var subset in Without(i))
        {
            var size = BitOperations.PopCount(subset);
            sum += Factorial(size) * Factorial(Corrections - size - 1) * (_values[subset | (1u << i)] - _values[subset]);
        }
        return sum / Factorial(Corrections);
    }

    /// <summary>The smallest and the largest part of a correction over all orders: every subset comes before it in some order.</summary>
    internal (decimal Smallest, decimal Largest) Range(int i)
    {
        var parts = Without(i).Select(subset => _values[subset | (1u << i)] - _values[subset]).ToList();
        return (parts.Min(), parts.Max());
    }

    private IEnumerable<uint> Without(int i) =>
        Enumerable.Range(0, _values.Length).Select(subset => (uint)subset).Where(subset => (subset & (1u << i)) == 0);

    private static decimal Factorial(int n)
    {
        var product = 1m;
        for (var k = 2; k <= n; k++) product *= k;
        return product;
    }
}
