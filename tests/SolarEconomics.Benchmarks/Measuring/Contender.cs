namespace SolarEconomics.Benchmarks;

/// <summary>One run: how long it took, and sums of what it made, worked out after the clock stopped.</summary>
internal sealed record Timed(double Seconds, IReadOnlyList<double> Checksum);

/// <summary>Somebody who can do a work: ours, a .NET peer, a Python process, a whole fresh process.</summary>
internal abstract class Contender(string name) : IDisposable
{
    internal string Name { get; } = name;

    /// <summary>What it needs and does not find, with the command that installs it; null where it can run.</summary>
    internal virtual string? Missing => null;

    internal abstract Timed Run();

    public virtual void Dispose()
    {
    }
}
