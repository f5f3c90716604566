namespace SolarEconomics;

/// <summary>One thing by which a plant contradicts itself, and the field that it stands in.</summary>
/// <param name="Place">JSON pointer to the field: in a file from its root, in a change from the change.</param>
/// <param name="Found">What was found, in words.</param>
/// <param name="Expected">What was expected, and what to do, in words.</param>
internal sealed record PlantMistake(string Place, string Found, string Expected);
