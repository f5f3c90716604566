namespace SolarEconomics;

/// <summary>Whether each string of an input needs a fuse for the modules' sake, and of what rating.</summary>
/// <param name="IsNeeded">Whether the other strings can feed more current into a faulty one than its modules bear; <see langword="null"/> where it cannot be told.</param>
/// <param name="AtLeastA">Least rating, 1.25 · 1.25 · Isc; <see langword="null"/> where it cannot be told. Unit: A. Source: gen-5.</param>
/// <param name="AtMostA">Largest fuse that the maker of the modules allows; <see langword="null"/> where unknown. Unit: A.</param>
/// <remarks>Planning aid: see the cautions of <see cref="StringCheck"/>. Protection of cables is another matter, and the local code's.</remarks>
public sealed record FuseNeed(bool? IsNeeded, double? AtLeastA, double? AtMostA);
