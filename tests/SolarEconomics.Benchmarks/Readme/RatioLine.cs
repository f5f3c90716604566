using System.Text.Json.Serialization;

namespace SolarEconomics.Benchmarks;

/// <summary>One row of the ratio table, as printed and as kept.</summary>
internal sealed record RatioLine
{
    public required string Work { get; init; }

    public required string Per { get; init; }

    public required long Items { get; init; }

    public required string Baseline { get; init; }

    /// <summary>Nanoseconds per item, median.</summary>
    public double? BaselineNs { get; init; }

    /// <summary>Nanoseconds per item, median.</summary>
    public required double OursNs { get; init; }

    /// <summary>How many times as fast as the baseline it should be at least.</summary>
    public double? Target { get; init; }

    /// <summary>Width of vectors that the target is set for; 0 where the work does not run in vector lanes.</summary>
    public int TargetVectorBits { get; init; }

    /// <summary>Width of the vectors that ran. Unit: bits.</summary>
    public int VectorBits { get; init; }

    /// <summary>Items a second that should be reached at least.</summary>
    public double? PerSecondTarget { get; init; }

    public long Bytes { get; init; }

    public double HoursOfData { get; init; }

    /// <summary>What the baseline needs and did not find.</summary>
    public string? Missing { get; init; }

    public IReadOnlyList<double> OurChecksum { get; init; } = [];

    public IReadOnlyList<double> BaselineChecksum { get; init; } = [];

    public bool ChecksumsEqual { get; init; }

    /// <summary>How many times as fast as the baseline.</summary>
    [JsonIgnore]
    public double? Ratio => BaselineNs / OursNs;

    /// <summary>The target for the vectors that this processor has: narrower ones are expected to be slower in proportion.</summary>
    [JsonIgnore]
    public double? TargetHere => VectorBits < TargetVectorBits ? Target * VectorBits / TargetVectorBits : Target;

    /// <summary>Whether the target is met; a ratio without matching checksums counts for nothing.</summary>
    [JsonIgnore]
    public bool? Met => TargetHere is { } target && Ratio is { } ratio ? ChecksumsEqual && ratio >= target : null;
}
