namespace SolarEconomics.Workbench;

/// <summary>What a piece of code does to names that it did not make itself.</summary>
/// <param name="Uses">Names that it reads.</param>
/// <param name="Changes">Names that mean another value or a changed object afterwards.</param>
/// <param name="Inside">Of those, the ones whose object is changed: it changes under every other name too.</param>
/// <param name="Asked">Calls on names for their value: the method, and the name. What the method does to its object is known only in the notebook.</param>
internal sealed record Touched(IReadOnlySet<string> Uses, IReadOnlySet<string> Changes, IReadOnlySet<string> Inside, IReadOnlyList<(string Method, string Name)> Asked);
