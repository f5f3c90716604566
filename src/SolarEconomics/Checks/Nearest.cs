namespace SolarEconomics;

/// <summary>Finds the names nearest to a misspelt one, for messages.</summary>
internal static class Nearest
{
    /// <summary>Up to <paramref name="most"/> names, nearest first, joined for a sentence.</summary>
    internal static string List(string name, IEnumerable<string> names, int most = 3) =>
        string.Join(", ", Of(name, names, most));

    internal static IReadOnlyList<string> Of(string name, IEnumerable<string> names, int most = 3) =>
        [.. names.OrderBy(n => Distance(name, n)).ThenBy(n => n, StringComparer.Ordinal).Take(most)];

    /// <summary>Levenshtein's edit distance, letters compared without case.</summary>
    internal static int Distance(string a, string b)
    {
        var previous = new int[b.Length + 1];
        var current = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) previous[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1;
                current[j] = Math.Min(Math.Min(current[j - 1], previous[j]) + 1, previous[j - 1] + change);
            }
            (previous, current) = (current, previous);
        }
        return previous[b.Length];
    }
}
