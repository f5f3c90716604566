using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Standard normal scores from counters: four to a block, a draw to a lane.</summary>
/// <remarks>Box and Muller: r = √(−2 ln u), angle a; r cos a and r sin a. Of each 64 bits 40 make u (so scores reach 7.4) and 24 the angle: two choose the
/// quarter, 22 the place in it. The series are cut at 2e-12. Source: stat-8.</remarks>
internal static class NormalScores
{
    private const ulong Lower = 0xFFFF_FFFF;
    private const ulong Mantissa = 0x000F_FFFF_FFFF_FFFF;

    // A double whose last bits are a whole number: 2^52.
    private const ulong WholeBits = 0x4330_0000_0000_0000;
    private const ulong RootHalfBits = 0x3FE6_A09E_667F_3BCD;
    private const ulong OneBits = 0x3FF0_0000_0000_0000;
    private const double Whole = 4503599627370496.0;

    /// <summary>Four scores of every draw from a first one on.</summary>
    /// <param name="draw">First draw; the lanes hold this one and the next.</param>
    /// <param name="block">Which four of a stream.</param>
    /// <param name="stream">Stream: what the scores are for.</param>
    /// <param name="seed">Seed.</param>
    // A call of its own: all that stands below then fits into what the compiler takes inline; two blocks in one call do not.
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    internal static (TLanes A, TLanes B, TLanes C, TLanes D) Four<TWords, TLanes>(ulong draw, uint block, uint stream, ulong seed)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var (first, second) = Words<TWords, TLanes>(draw, block, stream, seed);
        var (a, b) = Pair<TWords, TLanes>(first);
        var (c, d) = Pair<TWords, TLanes>(second);
        return (a, b, c, d);
    }

    /// <summary>The words that make four scores of every draw: 64 bits for two of them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (TWords First, TWords Second) Words<TWords, TLanes>(ulong draw, uint block, uint stream, ulong seed)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var draws = TWords.CountingFrom(draw);
        var (c0, c1, c2, c3) = Philox.Block<TWords, TLanes>(draws, TWords.ShiftRight(draws, 32), TWords.Of(block), TWords.Of(stream), (uint)seed, (uint)(seed >> 32));
        var lower = TWords.Of(Lower);
        return ((c0 & lower) | TWords.ShiftLeft(c1, 32), (c2 & lower) | TWords.ShiftLeft(c3, 32));
    }

    /// <summary>Two scores from 64 bits.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (TLanes Cosine, TLanes Sine) Pair<TWords, TLanes>(TWords bits)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var u = Fraction<TWords, TLanes>(TWords.ShiftRight(bits, 24), 1.0 / (1L << 40), 0.5 / (1L << 40));
        var radius = TLanes.SquareRoot(TLanes.Of(-2) * Ln<TWords, TLanes>(u));
        // Bit 22 turns the radius round, bit 23 exchanges sine and cosine: four quarters.
        var turned = TWords.AsLanes(TWords.BitsOf(radius) ^ (TWords.ShiftLeft(bits, 41) & TWords.Of(0x8000_0000_0000_0000)));
        var isExchanged = TWords.AsLanes(TWords.Of(0) - (TWords.ShiftRight(bits, 23) & TWords.Of(1)));
        const double quarter = Math.PI / 2;
        var angle = Fraction<TWords, TLanes>(bits & TWords.Of(0x3F_FFFF), quarter / (1 << 22), quarter * (0.5 / (1 << 22) - 0.5));
        var (sine, cosine) = SineAndCosine(angle);
        return (turned * TLanes.Select(isExchanged, sine, cosine), turned * TLanes.Select(isExchanged, cosine, sine));
    }

    /// <summary>whole · scale + shift, for whole numbers below 2^52.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Fraction<TWords, TLanes>(TWords whole, double scale, double shift)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes> =>
        TLanes.MultiplyAdd(TWords.AsLanes(whole | TWords.Of(WholeBits)) - TLanes.Of(Whole), TLanes.Of(scale), TLanes.Of(shift));

    /// <summary>Natural logarithm of a number above 0: ln(2^e m) = e ln 2 + 2 artanh((m − 1)/(m + 1)), m within √½ … √2.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes Ln<TWords, TLanes>(TLanes x)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var shifted = TWords.BitsOf(x) + TWords.Of(OneBits - RootHalfBits);
        var exponent = TWords.AsLanes(TWords.ShiftRight(shifted, 52) | TWords.Of(WholeBits)) - TLanes.Of(Whole + 1023);
        var m = TWords.AsLanes((shifted & TWords.Of(Mantissa)) + TWords.Of(RootHalfBits));
        var s = (m - TLanes.Of(1)) / (m + TLanes.Of(1));
        var z = s * s;
        var series = TLanes.Of(2.0 / 13);
        series = TLanes.MultiplyAdd(series, z, TLanes.Of(2.0 / 11));
        series = TLanes.MultiplyAdd(series, z, TLanes.Of(2.0 / 9));
        series = TLanes.MultiplyAdd(series, z, TLanes.Of(2.0 / 7));
        series = TLanes.MultiplyAdd(series, z, TLanes.Of(2.0 / 5));
        series = TLanes.MultiplyAdd(series, z, TLanes.Of(2.0 / 3));
        series = TLanes.MultiplyAdd(series, z, TLanes.Of(2.0));
        return TLanes.MultiplyAdd(exponent, TLanes.Of(0.693147180559945309), s * series);
    }

    /// <summary>Sine and cosine of an angle within ± π/4.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (TLanes Sine, TLanes Cosine) SineAndCosine<TLanes>(TLanes angle)
        where TLanes : struct, ILanes<TLanes>
    {
        var z = angle * angle;
        var sine = TLanes.Of(-1.0 / 39916800);
        sine = TLanes.MultiplyAdd(sine, z, TLanes.Of(1.0 / 362880));
        sine = TLanes.MultiplyAdd(sine, z, TLanes.Of(-1.0 / 5040));
        sine = TLanes.MultiplyAdd(sine, z, TLanes.Of(1.0 / 120));
        sine = TLanes.MultiplyAdd(sine, z, TLanes.Of(-1.0 / 6));
        sine = TLanes.MultiplyAdd(sine, z, TLanes.Of(1));
        var cosine = TLanes.Of(1.0 / 479001600);
        cosine = TLanes.MultiplyAdd(cosine, z, TLanes.Of(-1.0 / 3628800));
        cosine = TLanes.MultiplyAdd(cosine, z, TLanes.Of(1.0 / 40320));
        cosine = TLanes.MultiplyAdd(cosine, z, TLanes.Of(-1.0 / 720));
        cosine = TLanes.MultiplyAdd(cosine, z, TLanes.Of(1.0 / 24));
        cosine = TLanes.MultiplyAdd(cosine, z, TLanes.Of(-0.5));
        return (angle * sine, TLanes.MultiplyAdd(cosine, z, TLanes.Of(1)));
    }
}
