using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SolarEconomics;

/// <summary>Four doubles side by side.</summary>
internal readonly struct Lanes4(Vector256<double> value) : ILanes<Lanes4>
{
    private readonly Vector256<double> _value = value;

    public static int Width => 4;

    public static Lanes4 Zero => new(Vector256<double>.Zero);

    public static Lanes4 operator +(Lanes4 a, Lanes4 b) => new(a._value + b._value);

    public static Lanes4 operator -(Lanes4 a, Lanes4 b) => new(a._value - b._value);

    public static Lanes4 operator *(Lanes4 a, Lanes4 b) => new(a._value * b._value);

    public static Lanes4 operator /(Lanes4 a, Lanes4 b) => new(a._value / b._value);

    public static Lanes4 operator &(Lanes4 a, Lanes4 b) => new(a._value & b._value);

    public static Lanes4 operator |(Lanes4 a, Lanes4 b) => new(a._value | b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Load(ReadOnlySpan<double> values) => new(Vector256.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Not(Lanes4 a) => new(~a._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 MultiplyAdd(Lanes4 a, Lanes4 b, Lanes4 c) => new(Vector256.FusedMultiplyAdd(a._value, b._value, c._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Abs(Lanes4 a) => new(Vector256.Abs(a._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Max(Lanes4 a, Lanes4 b) => new(Vector256.Max(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 MaxNative(Lanes4 a, Lanes4 b) => new(Vector256.MaxNative(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 MinNative(Lanes4 a, Lanes4 b) => new(Vector256.MinNative(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 CopySign(Lanes4 size, Lanes4 sign) => new(Vector256.CopySign(size._value, sign._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 LessThan(Lanes4 a, Lanes4 b) => new(Vector256.LessThan(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Equal(Lanes4 a, Lanes4 b) => new(Vector256.Equals(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 Select(Lanes4 mask, Lanes4 yes, Lanes4 no) =>
        new(Vector256.ConditionalSelect(mask._value, yes._value, no._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool All(Lanes4 mask) => Vector256.EqualsAll(mask._value.AsUInt64(), Vector256<ulong>.AllBitsSet);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 SquareRoot(Lanes4 a) => new(Vector256.Sqrt(a._value));

    internal Vector256<double> Vector => _value;

    public void CopyTo(Span<double> values) => _value.CopyTo(values);
}
