namespace SolarEconomics;

/// <summary>A result that says itself: a figure shown large, the words after it, and what must be said with it.</summary>
/// <param name="Figure">The number or date in a few characters, for example <c>13.0 years</c>.</param>
/// <param name="Words">One to three plain sentences that go on from the figure.</param>
/// <remarks>Numbers in words, tables and charts come from the same result object. Text is plain: it is escaped where tags are written.</remarks>
public sealed record Finding(string Figure, string Words)
{
    /// <summary>Rules and assumptions used, one per line.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Cautions that stand on the result itself.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Tables that belong to the finding; empty where there is none.</summary>
    public IReadOnlyList<FindingTable> Tables { get; init; } = [];
}
