namespace SolarEconomics;

/// <summary>One word of 64 bits.</summary>
internal readonly struct Words1(ulong value) : IWords<Words1, Lanes1>
{
    private readonly ulong _value = value;

    internal ulong Value => _value;

    public static Words1 operator +(Words1 a, Words1 b) => new(a._value + b._value);

    public static Words1 operator -(Words1 a, Words1 b) => new(a._value - b._value);

    public static Words1 operator ^(Words1 a, Words1 b) => new(a._value ^ b._value);

    public static Words1 operator &(Words1 a, Words1 b) => new(a._value & b._value);

    public static Words1 operator |(Words1 a, Words1 b) => new(a._value | b._value);

    public static Words1 Of(ulong value) => new(value);

    public static Words1 CountingFrom(ulong first) => new(first);

    public static Words1 MultiplyLowerHalves(Words1 a, Words1 b) => new((ulong)(uint)a._value * (uint)b._value);

    public static Words1 ShiftLeft(Words1 a, int bits) => new(a._value << bits);

    public static Words1 ShiftRight(Words1 a, int bits) => new(a._value >> bits);

    public static Lanes1 AsLanes(Words1 a) => new(BitConverter.UInt64BitsToDouble(a._value));

    public static Words1 BitsOf(Lanes1 a) => new(BitConverter.DoubleToUInt64Bits(a.Value));
}
