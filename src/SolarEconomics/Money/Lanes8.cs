using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SolarEconomics;

/// <summary>Eight doubles side by side.</summary>
internal readonly struct Lanes8(Vector512<double> value) : ILanes<Lanes8>
{
    private readonly Vector512<double> _value = value;

    public static int Width => 8;

    public static Lanes8 Zero => new(Vector512<double>.Zero);

    public static Lanes8 operator +(Lanes8 a, Lanes8 b) => new(a._value + b._value);

    public static Lanes8 operator -(Lanes8 a, Lanes8 b) => new(a._value - b._value);

    public static Lanes8 operator *(Lanes8 a, Lanes8 b) => new(a._value * b._value);

    public static Lanes8 operator /(Lanes8 a, Lanes8 b) => new(a._value / b._value);

    public static Lanes8 operator &(Lanes8 a, Lanes8 b) => new(a._value & b._value);

    public static Lanes8 operator |(Lanes8 a, Lanes8 b) => new(a._value | b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Load(ReadOnlySpan<double> values) => new(Vector512.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Not(Lanes8 a) => new(~a._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 MultiplyAdd(Lanes8 a, Lanes8 b, Lanes8 c) => new(Vector512.FusedMultiplyAdd(a._value, b._value, c._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Abs(Lanes8 a) => new(Vector512.Abs(a._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Max(Lanes8 a, Lanes8 b) => new(Vector512.Max(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 MaxNative(Lanes8 a, Lanes8 b) => new(Vector512.MaxNative(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 MinNative(Lanes8 a, Lanes8 b) => new(Vector512.MinNative(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 CopySign(Lanes8 size, Lanes8 sign) => new(Vector512.CopySign(size._value, sign._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 LessThan(Lanes8 a, Lanes8 b) => new(Vector512.LessThan(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Equal(Lanes8 a, Lanes8 b) => new(Vector512.Equals(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 Select(Lanes8 mask, Lanes8 yes, Lanes8 no) =>
        new(Vector512.ConditionalSelect(mask._value, yes._value, no._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(Lanes8 mask) => Vector512.EqualsAll(mask._value.AsUInt64(), Vector512<ulong>.AllBitsSet);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 SquareRoot(Lanes8 a) => new(Vector512.Sqrt(a._value));

    internal Vector512<double> Vector => _value;

    public void CopyTo(Span<double> values) => _value.CopyTo(values);
}
