using NodaTime;

namespace SolarEconomics;

/// <summary>A place that a module came to.</summary>
/// <param name="From">First day there.</param>
/// <param name="Array">Name of the array; <see langword="null"/> where it went into store or away.</param>
/// <param name="Note">The owner's note, where there is one.</param>
public sealed record ModulePlace(LocalDate From, string? Array, string? Note = null)
{
    /// <summary>String of the array, counted from 1. Default: <see langword="null"/>, not known; then modules are laid into strings in the order in which they are listed.</summary>
    public int? String { get; init; }
}
