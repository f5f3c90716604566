using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Two vectors side by side, so that one is worked on while the other waits for a result.</summary>
/// <remarks>A multiply-add takes about four clock ticks and another could begin at each of them: sums in which every step needs the
/// one before it, as Horner's rule, leave most of a processor idle. With two at once the same code keeps it twice as busy.</remarks>
internal readonly struct LanesPair<TLanes>(TLanes first, TLanes second) : ILanes<LanesPair<TLanes>>
    where TLanes : struct, ILanes<TLanes>
{
    private readonly TLanes _first = first;
    private readonly TLanes _second = second;

    public static int Width => 2 * TLanes.Width;

    public static LanesPair<TLanes> Zero => new(TLanes.Zero, TLanes.Zero);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> operator +(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(a._first + b._first, a._second + b._second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> operator -(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(a._first - b._first, a._second - b._second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> operator *(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(a._first * b._first, a._second * b._second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> operator /(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(a._first / b._first, a._second / b._second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> operator &(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(a._first & b._first, a._second & b._second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> operator |(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(a._first | b._first, a._second | b._second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Of(double value) => new(TLanes.Of(value), TLanes.Of(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Load(ReadOnlySpan<double> values) => new(TLanes.Load(values), TLanes.Load(values[TLanes.Width..]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Not(LanesPair<TLanes> a) => new(TLanes.Not(a._first), TLanes.Not(a._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> MultiplyAdd(LanesPair<TLanes> a, LanesPair<TLanes> b, LanesPair<TLanes> c) =>
        new(TLanes.MultiplyAdd(a._first, b._first, c._first), TLanes.MultiplyAdd(a._second, b._second, c._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Abs(LanesPair<TLanes> a) => new(TLanes.Abs(a._first), TLanes.Abs(a._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> SquareRoot(LanesPair<TLanes> a) => new(TLanes.SquareRoot(a._first), TLanes.SquareRoot(a._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Max(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(TLanes.Max(a._first, b._first), TLanes.Max(a._second, b._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> MaxNative(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(TLanes.MaxNative(a._first, b._first), TLanes.MaxNative(a._second, b._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> MinNative(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(TLanes.MinNative(a._first, b._first), TLanes.MinNative(a._second, b._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> LessThan(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(TLanes.LessThan(a._first, b._first), TLanes.LessThan(a._second, b._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Equal(LanesPair<TLanes> a, LanesPair<TLanes> b) => new(TLanes.Equal(a._first, b._first), TLanes.Equal(a._second, b._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> CopySign(LanesPair<TLanes> size, LanesPair<TLanes> sign) =>
        new(TLanes.CopySign(size._first, sign._first), TLanes.CopySign(size._second, sign._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LanesPair<TLanes> Select(LanesPair<TLanes> mask, LanesPair<TLanes> yes, LanesPair<TLanes> no) =>
        new(TLanes.Select(mask._first, yes._first, no._first), TLanes.Select(mask._second, yes._second, no._second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(LanesPair<TLanes> mask) => TLanes.All(mask._first & mask._second);

    public void CopyTo(Span<double> values)
    {
        _first.CopyTo(values);
        _second.CopyTo(values[TLanes.Width..]);
    }
}
