namespace SolarEconomics.Notebook;

/// <summary>Some rows of a table.</summary>
/// <param name="Columns">Headings.</param>
/// <param name="Rows">The rows asked for, one text per column.</param>
/// <param name="Found">How many rows there are that hold what was looked for.</param>
/// <param name="Total">How many rows the table has.</param>
public sealed record TablePage(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, int Found, int Total);
