namespace SolarEconomics;

/// <summary>Knows a row of totals: by its words, or, where it has none, by holding the sums of the columns above it.</summary>
internal sealed class TotalRow(IReadOnlyList<ValueColumn> columns)
{
    private static readonly string[] Words =
        ["total", "totals", "subtotal", "sum", "sums", "grand", "overall", "summe", "gesamt", "gesamtsumme", "totaal", "totale", "average", "mean", "mittelwert", "minimum", "maximum", "min", "max"];

    /// <summary>Columns are added up for a row without words at most so often: a file of many such rows must not cost its square.</summary>
    private const int MostLookedAt = 8;

    /// <summary>Totals are printed with fewer digits than they have. Unit: share of the sum.</summary>
    private const double Rounding = 1e-5;

    private int _lookedAt;

    /// <summary>Whether the first field with text in it says that the row repeats what stands above it.</summary>
    internal static bool BeginsWithWord(ReadOnlySpan<string> fields)
    {
        foreach (var field in fields)
        {
            var text = field.AsSpan().Trim();
            if (text.IsEmpty) continue;
            var end = text.IndexOfAny(" :.\t");
            var word = end < 0 ? text : text[..end];
            foreach (var known in Words)
                if (word.Equals(known, StringComparison.OrdinalIgnoreCase)) return true;
            return false;
        }
        return false;
    }

    /// <summary>Whether every number of a row is the sum of its column so far.</summary>
    internal bool HoldsSums(ReadOnlySpan<string> fields, IntervalTable table, NumberText numbers)
    {
        if (table.Rows < 2 || _lookedAt >= MostLookedAt) return false;
        _lookedAt++;
        var any = false;
        for (var c = 0; c < columns.Count; c++)
        {
            if (columns[c].Index >= fields.Length || !numbers.TryRead(fields[columns[c].Index], out var number)) continue;
            var (sum, stated) = (default(CompensatedSum), columns[c].Scale(number));
            foreach (var value in table.Values(c)) sum.Add(value);
            if (sum.Total == 0 && stated == 0) continue;
            if (Math.Abs(sum.Total - stated) > Rounding * Math.Abs(sum.Total)) return false;
            any = true;
        }
        return any;
    }
}
