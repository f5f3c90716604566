namespace SolarEconomics;

/// <summary>Knows a row of totals by its words.</summary>
internal static class TotalWords
{
    private static readonly string[] Words = ["total", "totals", "sum", "sums", "grand total", "summe", "gesamt", "total:", "sum:", "totaal", "totale", "average", "mean", "mittelwert"];

    /// <summary>Whether the first field with text in it says that the row is a total.</summary>
    internal static bool Begin(ReadOnlySpan<string> fields)
    {
        foreach (var field in fields)
        {
            var text = field.Trim();
            if (text.Length > 0) return Array.Exists(Words, w => string.Equals(w, text, StringComparison.OrdinalIgnoreCase));
        }
        return false;
    }
}
