namespace SolarEconomics;

/// <summary>Words of 64 bits side by side, and how they turn into doubles of the same width.</summary>
internal interface IWords<TSelf, TLanes>
    where TSelf : struct, IWords<TSelf, TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    static abstract TSelf Of(ulong value);

    /// <summary>The words first, first + 1, first + 2 ….</summary>
    static abstract TSelf CountingFrom(ulong first);

    /// <summary>The product of the lower halves of two words: 32 by 32 bits give 64.</summary>
    static abstract TSelf MultiplyLowerHalves(TSelf a, TSelf b);

    static abstract TSelf operator +(TSelf a, TSelf b);

    static abstract TSelf operator -(TSelf a, TSelf b);

    static abstract TSelf operator ^(TSelf a, TSelf b);

    static abstract TSelf operator &(TSelf a, TSelf b);

    static abstract TSelf operator |(TSelf a, TSelf b);

    static abstract TSelf ShiftLeft(TSelf a, int bits);

    static abstract TSelf ShiftRight(TSelf a, int bits);

    /// <summary>The same bits read as doubles.</summary>
    static abstract TLanes AsLanes(TSelf a);

    /// <summary>The bits of doubles.</summary>
    static abstract TSelf BitsOf(TLanes a);
}
