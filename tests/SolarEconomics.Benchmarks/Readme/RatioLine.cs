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

    /// <summary>Whether the target is met; a ratio without matching checksums counts for nothing.</summary>
    [JsonIgnore]
    public bool? Met => Target is { } target && Ratio is { } ratio ? ChecksumsEqual && ratio >= target : null;
}
