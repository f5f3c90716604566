using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace SolarEconomics;

/// <summary>Four words of 64 bits side by side.</summary>
internal readonly struct Words4(Vector256<ulong> value) : IWords<Words4, Lanes4>
{
    private readonly Vector256<ulong> _value = value;

    public static Words4 operator +(Words4 a, Words4 b) => new(a._value + b._value);

    public static Words4 operator -(Words4 a, Words4 b) => new(a._value - b._value);

    public static Words4 operator ^(Words4 a, Words4 b) => new(a._value ^ b._value);

    public static Words4 operator &(Words4 a, Words4 b) => new(a._value & b._value);

    public static Words4 operator |(Words4 a, Words4 b) => new(a._value | b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words4 Of(ulong value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words4 CountingFrom(ulong first) => new(Vector256.Create(first) + Vector256<ulong>.Indices);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words4 MultiplyLowerHalves(Words4 a, Words4 b) => Avx2.IsSupported
        ? new(Avx2.Multiply(a._value.AsUInt32(), b._value.AsUInt32()))
        : new((a._value & Vector256.Create<ulong>(uint.MaxValue)) * (b._value & Vector256.Create<ulong>(uint.MaxValue)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words4 ShiftLeft(Words4 a, int bits) => new(a._value << bits);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words4 ShiftRight(Words4 a, int bits) => new(a._value >>> bits);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes4 AsLanes(Words4 a) => new(a._value.AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words4 BitsOf(Lanes4 a) => new(a.Vector.AsUInt64());
}
