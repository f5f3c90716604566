namespace AlderWeir;

/// <summary>Random numbers by place: the same seed, stream and index always give the same number, in whatever order they are asked for.</summary>
/// <remarks>The mixing is splitmix64. Bells are sums of twelve draws, so that no logarithm or cosine can differ between machines.</remarks>
internal sealed class Draw(ulong seed)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    /// <summary>A number from 0 up to, but not including, 1.</summary>
    internal double Unit(Stream stream, long index) => (Bits(stream, index) >> 11) * (1.0 / (1UL << 53));

    /// <summary>A number from low up to high.</summary>
    internal double Between(Stream stream, long index, double low, double high) => low + ((high - low) * Unit(stream, index));

    /// <summary>A bell-shaped number of mean 0 and deviation 1, never beyond ±6.</summary>
    internal double Bell(Stream stream, long index)
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++) sum += Unit(stream, (index * 12) + i);
        return sum;
    }

    private ulong Bits(Stream stream, long index) =>
        Mix(Mix(seed + ((ulong)stream * Golden)) + (((ulong)index + 1) * Golden));

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}

/// <summary>What a random number is for: each has numbers of its own.</summary>
internal enum Stream
{
    DayOfCloud = 1,
    PassingCloud,
    Warmth,
    HouseLevel,
    HouseSpike,
    HouseSpikeSize,
    Machine,
    MachineSize,
    SaturdayWork,
    PhotoDay,
    RefugeGuests,
    RefugeLevel,
    RefugeCellWarmth,
    RefugeTest,
    RefugeSpread,
    RefugeWater,
}
