namespace SolarEconomics.Benchmarks;

/// <summary>The machine and the programs behind a kept run.</summary>
internal sealed record Versions
{
    public required string Processor { get; init; }

    public required int Cores { get; init; }

    /// <summary>Width of the vectors that ran. Unit: bits.</summary>
    public required int VectorBits { get; init; }

    public required string System { get; init; }

    public required string Date { get; init; }

    /// <summary>Programs waiting for a core when the run began, one-minute mean: above 1, other work disturbed it.</summary>
    public double? LoadAtStart { get; init; }

    public required IReadOnlyDictionary<string, string> Programs { get; init; }
}
