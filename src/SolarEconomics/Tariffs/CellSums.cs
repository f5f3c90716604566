using System.Numerics;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Adds and prices short rows of energy, several values at once.</summary>
internal static class CellSums
{
    /// <summary>Adds a day's energy to its row, interval by interval.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(ReadOnlySpan<double> kwh, Span<double> cells)
    {
        var width = Vector<double>.Count;
        var i = 0;
        for (; i + width <= kwh.Length; i += width)
            (new Vector<double>(kwh[i..]) + new Vector<double>(cells[i..])).CopyTo(cells[i..]);
        for (; i < kwh.Length; i++) cells[i] += kwh[i];
    }

    /// <summary>Σ energy × price.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(ReadOnlySpan<double> cells, ReadOnlySpan<double> prices)
    {
        // Two sums, so that an addition does not wait for the one before it.
        var (first, second) = (Vector<double>.Zero, Vector<double>.Zero);
        var width = Vector<double>.Count;
        var i = 0;
        for (; i + (2 * width) <= cells.Length; i += 2 * width)
        {
            first += new Vector<double>(cells[i..]) * new Vector<double>(prices[i..]);
            second += new Vector<double>(cells[(i + width)..]) * new Vector<double>(prices[(i + width)..]);
        }
        var sum = Vector.Sum(first + second);
        for (; i < cells.Length; i++) sum += cells[i] * prices[i];
        return sum;
    }
}
