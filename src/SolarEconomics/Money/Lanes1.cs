using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>One double where a processor has no wide vectors, and what is left over after the last whole vector. A mask is all bits or none.</summary>
internal readonly struct Lanes1(double value) : ILanes<Lanes1>
{
    private readonly double _value = value;

    public static int Width => 1;

    public static Lanes1 Zero => new(0);

    internal double Value => _value;

    public static Lanes1 operator +(Lanes1 a, Lanes1 b) => new(a._value + b._value);

    public static Lanes1 operator -(Lanes1 a, Lanes1 b) => new(a._value - b._value);

    public static Lanes1 operator *(Lanes1 a, Lanes1 b) => new(a._value * b._value);

    public static Lanes1 operator /(Lanes1 a, Lanes1 b) => new(a._value / b._value);

    public static Lanes1 operator &(Lanes1 a, Lanes1 b) => Bits(Bits(a) & Bits(b));

    public static Lanes1 operator |(Lanes1 a, Lanes1 b) => Bits(Bits(a) | Bits(b));

    public static Lanes1 Of(double value) => new(value);

    public static Lanes1 Load(ReadOnlySpan<double> values) => new(values[0]);

    public static Lanes1 Not(Lanes1 a) => Bits(~Bits(a));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes1 MultiplyAdd(Lanes1 a, Lanes1 b, Lanes1 c) => new(Math.FusedMultiplyAdd(a._value, b._value, c._value));

    public static Lanes1 Abs(Lanes1 a) => new(Math.Abs(a._value));

    public static Lanes1 SquareRoot(Lanes1 a) => new(Math.Sqrt(a._value));

    public static Lanes1 Max(Lanes1 a, Lanes1 b) => new(Math.Max(a._value, b._value));

    public static Lanes1 MaxNative(Lanes1 a, Lanes1 b) => new(double.MaxNative(a._value, b._value));

    public static Lanes1 MinNative(Lanes1 a, Lanes1 b) => new(double.MinNative(a._value, b._value));

    public static Lanes1 CopySign(Lanes1 size, Lanes1 sign) => new(Math.CopySign(size._value, sign._value));

    public static Lanes1 LessThan(Lanes1 a, Lanes1 b) => Mask(a._value < b._value);

    public static Lanes1 Equal(Lanes1 a, Lanes1 b) => Mask(a._value == b._value);

    public static Lanes1 Select(Lanes1 mask, Lanes1 yes, Lanes1 no) => Bits((Bits(mask) & Bits(yes)) | (~Bits(mask) & Bits(no)));

    public static bool All(Lanes1 mask) => Bits(mask) == ulong.MaxValue;

    public void CopyTo(Span<double> values) => values[0] = _value;

    private static Lanes1 Mask(bool isSet) => Bits(isSet ? ulong.MaxValue : 0);

    private static ulong Bits(Lanes1 a) => BitConverter.DoubleToUInt64Bits(a._value);

    private static Lanes1 Bits(ulong bits) => new(BitConverter.UInt64BitsToDouble(bits));
}
