using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace SolarEconomics;

/// <summary>Adds up energy times price, where a byte per interval names the price: eight look-ups at once, or four where the machine is narrower.</summary>
internal static class BandCosts
{
    private const int Lanes = 8;

    /// <summary>Σ kWh × rate of the interval's band.</summary>
    /// <param name="kwh">Energy per interval.</param>
    /// <param name="bands">Band per interval, below the number of rates; as long as <paramref name="kwh"/>.</param>
    /// <param name="rates">Price by band.</param>
    internal static double Sum(ReadOnlySpan<double> kwh, ReadOnlySpan<byte> bands, ReadOnlySpan<double> rates) =>
        rates.Length > Lanes ? SumPlain(kwh, bands, rates)
        : Vector512.IsHardwareAccelerated && Avx512F.IsSupported ? SumWide(kwh, bands, rates)
        : Avx2.IsSupported ? SumHalfWide(kwh, bands, rates)
        : SumPlain(kwh, bands, rates);

    /// <summary>The same, one interval after another in four sums: for machines without wide look-ups, and to test the other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double SumPlain(ReadOnlySpan<double> kwh, ReadOnlySpan<byte> bands, ReadOnlySpan<double> rates)
    {
        double a = 0, b = 0, c = 0, d = 0;
        var i = 0;
        for (; i + 4 <= kwh.Length; i += 4)
        {
            a += kwh[i] * rates[bands[i]];
            b += kwh[i + 1] * rates[bands[i + 1]];
            c += kwh[i + 2] * rates[bands[i + 2]];
            d += kwh[i + 3] * rates[bands[i + 3]];
        }
        for (; i < kwh.Length; i++) a += kwh[i] * rates[bands[i]];
        return a + b + (c + d);
    }

    // A hot loop that is short-lived must not start unoptimised.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double SumWide(ReadOnlySpan<double> kwh, ReadOnlySpan<byte> bands, ReadOnlySpan<double> rates)
    {
        Span<double> eight = stackalloc double[Lanes];
        eight.Clear();
        rates.CopyTo(eight);
        var table = Vector512.Create<double>(eight);
        ref var energy = ref MemoryMarshal.GetReference(kwh);
        ref var band = ref MemoryMarshal.GetReference(bands);
        var (first, second) = (Vector512<double>.Zero, Vector512<double>.Zero);
        var i = 0;
        for (; i + (2 * Lanes) <= kwh.Length; i += 2 * Lanes)
        {
            first += Vector512.LoadUnsafe(ref energy, (nuint)i) * LookUp(table, ref band, i);
            second += Vector512.LoadUnsafe(ref energy, (nuint)(i + Lanes)) * LookUp(table, ref band, i + Lanes);
        }
        return Vector512.Sum(first + second) + SumPlain(kwh[i..], bands[i..], rates);
    }

    /// <summary>The same for 256-bit machines: two tables of four prices, chosen by the third bit of the band.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double SumHalfWide(ReadOnlySpan<double> kwh, ReadOnlySpan<byte> bands, ReadOnlySpan<double> rates)
    {
        Span<double> eight = stackalloc double[Lanes];
        eight.Clear();
        rates.CopyTo(eight);
        var low = Vector256.Create<double>(eight[..4]).AsInt32();
        var high = Vector256.Create<double>(eight[4..]).AsInt32();
        ref var energy = ref MemoryMarshal.GetReference(kwh);
        ref var band = ref MemoryMarshal.GetReference(bands);
        var (first, second) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var i = 0;
        for (; i + Lanes <= kwh.Length; i += Lanes)
        {
            first += Vector256.LoadUnsafe(ref energy, (nuint)i) * LookUp(low, high, ref band, i);
            second += Vector256.LoadUnsafe(ref energy, (nuint)(i + 4)) * LookUp(low, high, ref band, i + 4);
        }
        return Vector256.Sum(first + second) + SumPlain(kwh[i..], bands[i..], rates);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> LookUp(Vector256<int> low, Vector256<int> high, ref byte bands, int at)
    {
        var four = Vector128.CreateScalarUnsafe(Unsafe.ReadUnaligned<int>(ref Unsafe.Add(ref bands, at))).AsByte();
        var band = Avx2.ConvertToVector256Int64(four);
        // A price is two 32-bit halves, at twice the band and one above; the permutation reads three bits of each.
        var halves = ((band << 1) | (band << 33)) + Vector256.Create(1L << 32);
        var fromLow = Avx2.PermuteVar8x32(low, halves.AsInt32()).AsDouble();
        var fromHigh = Avx2.PermuteVar8x32(high, halves.AsInt32()).AsDouble();
        return Avx.BlendVariable(fromLow, fromHigh, (band << 61).AsDouble());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> LookUp(Vector512<double> table, ref byte bands, int at)
    {
        // Eight bytes widened to eight indices; the table stays in a register.
        var eight = Vector128.CreateScalarUnsafe(Unsafe.ReadUnaligned<long>(ref Unsafe.Add(ref bands, at))).AsByte();
        return Avx512F.PermuteVar8x64(table, Avx512F.ConvertToVector512Int64(eight));
    }
}
