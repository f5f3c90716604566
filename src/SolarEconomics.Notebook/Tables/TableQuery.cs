namespace SolarEconomics.Notebook;

/// <summary>Which rows of a table that a session holds are wanted.</summary>
/// <param name="TableId">Name of the table, as its output gives it.</param>
/// <param name="From">First row wanted, counted from 0 among those that are found, in the order asked for.</param>
/// <param name="Count">Most rows wanted.</param>
/// <param name="SortBy">Column to sort by, counted from 0; <see langword="null"/> keeps the table's own order.</param>
/// <param name="Descending">Largest first.</param>
/// <param name="Find">Text that a row must hold in one of its cells, in any case; empty finds all.</param>
/// <param name="ForFile">Whether numbers and dates are written as a file has them, not as people read them.</param>
public sealed record TableQuery(string TableId, int From, int Count, int? SortBy = null, bool Descending = false, string Find = "", bool ForFile = false)
{
    /// <summary>Most rows that one answer holds.</summary>
    public const int Most = 200_000;
}
