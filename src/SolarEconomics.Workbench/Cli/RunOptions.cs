namespace SolarEconomics.Workbench;

/// <summary>What <c>run</c> was asked.</summary>
/// <param name="Notebook">The file as typed.</param>
/// <param name="Save">Where to write the notebook with its answers, or null.</param>
/// <param name="Set">Assumptions as typed: <c>discountRate=0.04</c>.</param>
/// <param name="List">Only list the assumptions.</param>
internal sealed record RunOptions(string Notebook, string? Save, IReadOnlyList<string> Set, bool List);
