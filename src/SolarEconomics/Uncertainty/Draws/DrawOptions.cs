namespace SolarEconomics;

/// <summary>How many draws are taken, and from which seed. The same seed gives the same draws on any number of threads.</summary>
public sealed record DrawOptions
{
    /// <summary>Seed of the draws. Any number. Default: 1. Two results with one seed share the draws of the inputs they share.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Draws at most. Range: 100 to 100,000,000. Default: 10,000, which tells a 10th percentile to about a fiftieth of the spread.</summary>
    public int MostDraws { get; init; } = 10_000;

    /// <summary>Stop once the standard error of the mean is this small. Unit: the site's currency. Default: <see langword="null"/>, all draws are taken.</summary>
    /// <remarks>Looked at after 4,096 draws and each time their number has doubled, so that the end does not depend on threads.</remarks>
    public double? StopAtStandardError { get; init; }

    /// <summary>Threads at most. Range: 1 to 1,024. Default: <see langword="null"/>, one for each processor. Changes the time, never a figure.</summary>
    public int? Threads { get; init; }

    internal DrawOptions Checked()
    {
        Require.Within(MostDraws, 100, 100_000_000, "draws");
        if (Threads is { } threads) Require.Within(threads, 1, 1024, "threads");
        if (StopAtStandardError is { } error) Require.Within(error, 1e-9, 1e15, "standard error of the mean, in money");
        return this;
    }
}
