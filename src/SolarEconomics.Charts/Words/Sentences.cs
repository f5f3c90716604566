namespace SolarEconomics.Charts;

/// <summary>Findings as running text.</summary>
internal static class Sentences
{
    /// <summary>Figure and words as one paragraph.</summary>
    internal static string Join(Finding finding) => $"{finding.Figure} {finding.Words}".Trim();

    /// <summary>The first sentence, for the head of a picture: one finding per picture.</summary>
    internal static string Headline(Finding finding)
    {
        var text = Join(finding);
        for (var i = 0; i + 1 < text.Length; i++)
        {
            // A full stop inside a number or an abbreviation such as "4.1" has no blank and capital after it.
            if (text[i] is '.' or ';' && text[i + 1] == ' ' && (text[i] != '.' || i + 2 < text.Length && char.IsUpper(text[i + 2])))
            {
                return text[..i] + ".";
            }
        }

        return text;
    }

    /// <summary>A heading as a sentence: with a full stop where it does not ask.</summary>
    internal static string Ended(string heading) => heading.EndsWith('?') || heading.EndsWith('.') ? heading : heading + ".";

    /// <summary>With a capital at the start of a sentence.</summary>
    internal static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>Breaks text into lines of at most so many characters, at blanks.</summary>
    internal static IReadOnlyList<string> Wrap(string text, int charactersPerLine)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > charactersPerLine)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : line + " " + word;
            }
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>Text as plotly takes it: its few tags are read, so what is not ours is escaped.</summary>
    internal static string Escape(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
