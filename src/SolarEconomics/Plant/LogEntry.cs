using NodaTime;

namespace SolarEconomics;

/// <summary>Something that was done to the plant or befell it, noted by its owner.</summary>
/// <param name="On">The day.</param>
/// <param name="Kind">What it was.</param>
public sealed record LogEntry(LocalDate On, LogKind Kind)
{
    /// <summary>Name of the face or device; <see langword="null"/> for the whole plant.</summary>
    public string? Where { get; init; }

    /// <summary>The owner's note, where there is one.</summary>
    public string? Note { get; init; }

    /// <summary>Whether the entry speaks of a device or of the whole plant.</summary>
    /// <param name="names">Names of the device and of its faces.</param>
    internal bool Concerns(IEnumerable<string> names) => Where is null || names.Contains(Where, StringComparer.Ordinal);
}
