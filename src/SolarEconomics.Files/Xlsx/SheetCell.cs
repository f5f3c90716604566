using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>One cell of a row as text.</summary>
/// <param name="Column">Its column, counted from 0.</param>
/// <param name="Text">Its text: a number as the workbook writes it, a time in ISO form, or a text.</param>
/// <param name="IsNumber">Whether it is a plain number, no date or time.</param>
internal readonly record struct SheetCell(int Column, string Text, bool IsNumber)
{
    /// <summary>A sheet has no more columns.</summary>
    internal const int MostColumns = 16_384;

    private const int Letters = 26;

    /// <summary>Name of a cell as a workbook shows it: C17.</summary>
    internal static string NameOf(int column, int row)
    {
        var letters = "";
        for (var rest = column + 1; rest > 0; rest = (rest - 1) / Letters) letters = (char)('A' + ((rest - 1) % Letters)) + letters;
        return letters + row.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Column and row of a name, both counted from 0 and 1; false where it is none.</summary>
    internal static bool TryPlace(ReadOnlySpan<char> name, out int column, out int row)
    {
        (column, row) = (0, 0);
        var at = 0;
        for (; at < name.Length && char.IsAsciiLetter(name[at]) && column < MostColumns; at++) column = (column * Letters) + (char.ToUpperInvariant(name[at]) - 'A' + 1);
        return column-- is > 0 and <= MostColumns && int.TryParse(name[at..], NumberStyles.None, CultureInfo.InvariantCulture, out row) && row > 0;
    }
}
