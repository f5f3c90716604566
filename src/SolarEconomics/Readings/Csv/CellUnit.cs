namespace SolarEconomics;

/// <summary>A unit written behind a number in its cell: <c>1.2 kWh</c>.</summary>
internal static class CellUnit
{
    private const int LongestName = 5;

    /// <summary>Parts a field into its number and its unit; false where it ends in none.</summary>
    internal static bool TrySplit(ReadOnlySpan<char> field, out ReadOnlySpan<char> number, out EnergyUnit unit)
    {
        field = field.Trim();
        var letters = 0;
        while (letters < field.Length && letters <= LongestName && char.IsAsciiLetter(field[^(letters + 1)])) letters++;
        number = field[..^letters].TrimEnd();
        unit = null!;
        if (letters is 0 or > LongestName || number.IsEmpty || !char.IsAsciiDigit(number[^1]) || EnergyUnit.Find(field[^letters..].ToString()) is not { } found) return false;
        unit = found;
        return true;
    }

    /// <summary>The field without a unit behind its number.</summary>
    internal static string Bare(string field) => field.Length > 0 && char.IsAsciiLetter(field.AsSpan().TrimEnd() is [.., var last] ? last : ' ') && TrySplit(field, out var number, out _) ? number.ToString() : field;

    /// <summary>The unit that the first numbers of a column name; <see langword="null"/> where they name none.</summary>
    internal static string? OfColumn(IReadOnlyList<string[]> rows, int index)
    {
        foreach (var row in rows)
            if (index < row.Length && !string.IsNullOrWhiteSpace(row[index])) return TrySplit(row[index], out _, out var unit) ? unit.Name : null;
        return null;
    }
}
