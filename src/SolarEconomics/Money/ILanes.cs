namespace SolarEconomics;

/// <summary>Doubles side by side: one way to write a calculation for vectors of eight and of four.</summary>
internal interface ILanes<TSelf>
    where TSelf : struct, ILanes<TSelf>
{
    static abstract int Width { get; }

    static abstract TSelf Zero { get; }

    static abstract TSelf Of(double value);

    static abstract TSelf Load(ReadOnlySpan<double> values);

    static abstract TSelf operator +(TSelf a, TSelf b);

    static abstract TSelf operator -(TSelf a, TSelf b);

    static abstract TSelf operator *(TSelf a, TSelf b);

    static abstract TSelf operator /(TSelf a, TSelf b);

    static abstract TSelf operator &(TSelf a, TSelf b);

    static abstract TSelf operator |(TSelf a, TSelf b);

    static abstract TSelf Not(TSelf a);

    static abstract TSelf MultiplyAdd(TSelf a, TSelf b, TSelf c);

    static abstract TSelf Abs(TSelf a);

    static abstract TSelf SquareRoot(TSelf a);

    static abstract TSelf Max(TSelf a, TSelf b);

    /// <summary>The processor's own maximum, which asks nothing about what is no number: for finite values.</summary>
    static abstract TSelf MaxNative(TSelf a, TSelf b);

    /// <summary>The processor's own minimum, for finite values.</summary>
    static abstract TSelf MinNative(TSelf a, TSelf b);

    static abstract TSelf CopySign(TSelf size, TSelf sign);

    static abstract TSelf LessThan(TSelf a, TSelf b);

    static abstract TSelf Equal(TSelf a, TSelf b);

    static abstract TSelf Select(TSelf mask, TSelf yes, TSelf no);

    /// <summary>Whether every lane of a mask is set.</summary>
    static abstract bool All(TSelf mask);

    void CopyTo(Span<double> values);
}
