namespace SolarEconomics;

/// <summary>The words in which a table of ours says what is known of a value: written beside it, and read back.</summary>
internal static class QualityWords
{
    /// <summary>How the header of such a column begins; the header of the column that it speaks of follows.</summary>
    internal const string HeaderBegin = "quality of ";

    private static readonly (Quality Flag, string Word)[] Words =
    [
        (Quality.Estimated, "estimated"), (Quality.Filled, "filled"), (Quality.Repeated, "repeated"),
        (Quality.Negative, "negative"), (Quality.Censored, "censored"), (Quality.Doubtful, "doubtful"),
    ];

    internal static string Of(Quality quality) => string.Join(' ', Words.Where(w => quality.HasFlag(w.Flag)).Select(w => w.Word));

    /// <summary>Reads words back; false where one of them is none of ours.</summary>
    internal static bool TryRead(string text, out Quality quality)
    {
        quality = Quality.Good;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var found = Array.FindIndex(Words, w => string.Equals(w.Word, word, StringComparison.OrdinalIgnoreCase));
            if (found < 0) return false;
            quality |= Words[found].Flag;
        }
        return true;
    }
}
