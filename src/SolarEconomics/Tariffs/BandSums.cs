using System.Numerics;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Adds up energy by rate. The hot loop of every bill.</summary>
internal static class BandSums
{
    private const int Lanes = 4;

    /// <summary>Adds each interval's kWh to the sum of its band; a band as high as the number of sums is left out.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(ReadOnlySpan<double> kwh, ReadOnlySpan<byte> bands, Span<double> sums)
    {
        // Four sets of sums, so that an addition does not wait for the one before it.
        var width = sums.Length + 1;
        Span<double> lanes = stackalloc double[Lanes * width];
        lanes.Clear();
        var first = lanes[..width];
        var second = lanes.Slice(width, width);
        var third = lanes.Slice(2 * width, width);
        var fourth = lanes[(3 * width)..];
        var i = 0;
        for (; i + Lanes <= kwh.Length; i += Lanes)
        {
            first[bands[i]] += kwh[i];
            second[bands[i + 1]] += kwh[i + 1];
            third[bands[i + 2]] += kwh[i + 2];
            fourth[bands[i + 3]] += kwh[i + 3];
        }
        for (; i < kwh.Length; i++) first[bands[i]] += kwh[i];
        for (var band = 0; band < sums.Length; band++)
            sums[band] += first[band] + second[band] + (third[band] + fourth[band]);
    }

    /// <summary>The plain sum, which also tells whether every value is a finite number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Total(ReadOnlySpan<double> kwh)
    {
        // Four sums, so that an addition does not wait for the one before it.
        var (first, second, third, fourth) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
        var width = Vector<double>.Count;
        var i = 0;
        for (; i + (4 * width) <= kwh.Length; i += 4 * width)
        {
            var block = kwh.Slice(i, 4 * width);
            first += new Vector<double>(block);
            second += new Vector<double>(block[width..]);
            third += new Vector<double>(block[(2 * width)..]);
            fourth += new Vector<double>(block[(3 * width)..]);
        }
        var total = Vector.Sum(first + second + (third + fourth));
        for (; i < kwh.Length; i++) total += kwh[i];
        return total;
    }
}
