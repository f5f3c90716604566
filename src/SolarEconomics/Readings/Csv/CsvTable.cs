namespace SolarEconomics;

/// <summary>What the head of a table shows: the delimiter, the field of the time, and the rows that hold one.</summary>
/// <param name="Delimiter">Mark between fields.</param>
/// <param name="StampIndex">Field of the time, counted from 0.</param>
/// <param name="FirstLine">Line of the first row, counted from 1.</param>
/// <param name="Rows">The rows of the head, split into fields.</param>
internal sealed record CsvTable(char Delimiter, int StampIndex, int FirstLine, IReadOnlyList<string[]> Rows)
{
    /// <summary>Line of each row, counted from 1; empty where rows follow each other from the first on.</summary>
    internal IReadOnlyList<int> Lines { get; init; } = [];

    /// <summary>Line of a row.</summary>
    internal int LineOf(int row) => row < Lines.Count ? Lines[row] : FirstLine + row;

    /// <summary>Where the parts of the time stand apart; <see langword="null"/> where it stands in one field.</summary>
    internal TimeParts? Parts { get; init; }
}
