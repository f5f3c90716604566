using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace SolarEconomics;

/// <summary>Eight words of 64 bits side by side.</summary>
internal readonly struct Words8(Vector512<ulong> value) : IWords<Words8, Lanes8>
{
    private readonly Vector512<ulong> _value = value;

    public static Words8 operator +(Words8 a, Words8 b) => new(a._value + b._value);

    public static Words8 operator -(Words8 a, Words8 b) => new(a._value - b._value);

    public static Words8 operator ^(Words8 a, Words8 b) => new(a._value ^ b._value);

    public static Words8 operator &(Words8 a, Words8 b) => new(a._value & b._value);

    public static Words8 operator |(Words8 a, Words8 b) => new(a._value | b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words8 Of(ulong value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words8 CountingFrom(ulong first) => new(Vector512.Create(first) + Vector512<ulong>.Indices);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words8 MultiplyLowerHalves(Words8 a, Words8 b) => Avx512F.IsSupported
        ? new(Avx512F.Multiply(a._value.AsUInt32(), b._value.AsUInt32()))
        : new((a._value & Vector512.Create<ulong>(uint.MaxValue)) * (b._value & Vector512.Create<ulong>(uint.MaxValue)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words8 ShiftLeft(Words8 a, int bits) => new(a._value << bits);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words8 ShiftRight(Words8 a, int bits) => new(a._value >>> bits);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes8 AsLanes(Words8 a) => new(a._value.AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Words8 BitsOf(Lanes8 a) => new(a.Vector.AsUInt64());
}
