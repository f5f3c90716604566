namespace SolarEconomics.Benchmarks;

/// <summary>A peer, and how many times as fast as it we mean to be; no number where the difference is only reported.</summary>
internal sealed record Rival(Contender Peer, double? Target);

/// <summary>One work done by us and by others on the same input.</summary>
/// <param name="Work">Name in the table.</param>
/// <param name="Per">What one item is.</param>
/// <param name="Items">Items in one run.</param>
/// <param name="Ours">This project.</param>
/// <param name="Rivals">Who it is held against.</param>
internal sealed record Comparison(string Work, string Per, long Items, Contender Ours, IReadOnlyList<Rival> Rivals) : IDisposable
{
    /// <summary>Runs at least; whole processes take seven.</summary>
    internal int Runs { get; init; } = 5;

    /// <summary>How far checksums may lie apart by chance where contenders draw from generators of their own; 0 where all do the same sums.</summary>
    internal double ByChance { get; init; }

    /// <summary>Bytes read in one run, where the work reads a file.</summary>
    internal long Bytes { get; init; }

    /// <summary>Width of vectors that the targets are set for, where the work runs in vector lanes; half as wide is expected to reach half. 0 for other work.</summary>
    internal int TargetVectorBits { get; init; }

    /// <summary>Items a second that should be reached at least, where that is stated beside the ratio.</summary>
    internal double? PerSecondTarget { get; init; }

    /// <summary>Hours of one household's data that one run works through.</summary>
    internal double HoursOfData { get; init; }

    public void Dispose()
    {
        Ours.Dispose();
        foreach (var rival in Rivals) rival.Peer.Dispose();
    }
}
