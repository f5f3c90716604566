namespace SolarEconomics;

/// <summary>A small table of a finding, already formatted for people.</summary>
/// <param name="Caption">What the table shows, with its unit.</param>
/// <param name="Columns">Heading of each column.</param>
/// <param name="Rows">Cells, one list per row, as long as <paramref name="Columns"/>.</param>
public sealed record FindingTable(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);
