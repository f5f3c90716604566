using System.Buffers;

namespace SolarEconomics;

/// <summary>A small table of a finding, already formatted for people.</summary>
/// <param name="Caption">What the table shows, with its unit.</param>
/// <param name="Columns">Heading of each column.</param>
/// <param name="Rows">Cells, one list per row, as long as <paramref name="Columns"/>.</param>
public sealed record FindingTable(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    // Longer is a sentence, even if it begins with a number.
    private const int LongestAmount = 24;
    private static readonly SearchValues<char> s_capitals = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZ");

    /// <summary>Whether a column holds amounts only, to be set flush right.</summary>
    /// <param name="column">Place of the column, from 0.</param>
    /// <returns>False for a column without an amount in it.</returns>
    public bool IsOfAmounts(int column)
    {
        var cells = Rows.Where(r => column < r.Count).Select(r => r[column]).ToList();
        return cells.Exists(IsAmount) && cells.TrueForAll(c => IsMissing(c) || IsAmount(c));
    }

    /// <summary>An amount has a digit before any letter, but for the letters of a currency: <c>−US$5</c>, <c>CHF 5</c>.</summary>
    private static bool IsAmount(string cell)
    {
        if (cell.Length > LongestAmount) return false;
        var rest = cell.AsSpan().TrimStart(" −–+-");
        var letters = rest.IndexOfAnyExcept(s_capitals);
        if (letters is 1 or 2 && rest[letters] == '$') rest = rest[(letters + 1)..];
        // A code of a currency has a blank behind it at which no line ends; the name of a device has not.
        else if (letters is 1 or 3 && rest[letters] == '\u00a0') rest = rest[(letters + 1)..];
        foreach (var c in rest)
        {
            if (char.IsDigit(c)) return true;
            if (char.IsLetter(c)) return false;
        }
        return false;
    }

    private static bool IsMissing(string cell) => cell is "" or "–" or "—";
}
