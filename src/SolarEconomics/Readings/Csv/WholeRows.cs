using System.Text;

namespace SolarEconomics;

/// <summary>Lines of a table with every row on one: where a quoted field holds line breaks, they become spaces and the lines join the first.</summary>
/// <remarks>The lines that joined another stay as empty ones, so that every line keeps its number. A field that is not closed after some lines, or before what
/// looks like the next row, is none over several lines: its line stands by itself, and nothing below is swallowed.</remarks>
/// <param name="next">Gives the next line as it stands in the file; <see langword="null"/> at the end.</param>
/// <param name="delimiters">Marks between fields, one where the table's is known.</param>
/// <param name="isRow">Whether a line is a row of the table by itself.</param>
internal sealed class WholeRows(Func<string?> next, char[] delimiters, Func<string, bool> isRow)
{
    /// <summary>Stands where a line joined another. White space to every reader.</summary>
    internal const string Joined = "\u2028";

    private const int MostLines = 50;
    private const int MostLetters = 1 << 16;

    private readonly List<string> _ahead = [];
    private int _joined;

    /// <summary>First line that is looked at, counted from 1; those before it are given as they stand.</summary>
    internal int FirstLine { get; init; } = 1;

    /// <summary>Told of a mark that is never closed: line, field and the line itself.</summary>
    internal Action<int, int, string>? NeverClosed { get; init; }

    /// <summary>Number of the line given last, counted from 1.</summary>
    internal int Line { get; private set; }

    /// <summary>Whether a line may be joined by those below it.</summary>
    internal static bool IsOpen(string line, ReadOnlySpan<char> delimiters, out int field)
    {
        field = 0;
        return line.Contains('"', StringComparison.Ordinal) && !line.StartsWith('#') && QuotedText.EndOf(line, delimiters, inside: false, out field) == QuotedText.LineEnd.Open;
    }

    /// <summary>The next line; <see langword="null"/> at the end.</summary>
    internal string? Next()
    {
        if (_joined > 0)
        {
            _joined--;
            Line++;
            return Joined;
        }
        if (!TryPeek(0, out var line)) return null;
        Line++;
        if (Line >= FirstLine && IsOpen(line, delimiters, out var field))
        {
            if (TryJoin(line) is { } whole) return whole;
            NeverClosed?.Invoke(Line, field, line);
        }
        _ahead.RemoveAt(0);
        return line;
    }

    private string? TryJoin(string first)
    {
        var whole = new StringBuilder(first);
        for (var below = 1; below <= MostLines && whole.Length < MostLetters && TryPeek(below, out var line) && !isRow(line); below++)
        {
            var end = QuotedText.EndOf(line, delimiters, inside: true, out _);
            if (end == QuotedText.LineEnd.Broken) return null;
            whole.Append(' ').Append(line);
            if (end == QuotedText.LineEnd.Open) continue;
            _ahead.RemoveRange(0, below + 1);
            _joined = below;
            return whole.ToString();
        }
        return null;
    }

    private bool TryPeek(int at, out string line)
    {
        line = "";
        while (_ahead.Count <= at)
        {
            if (next() is not { } more) return false;
            _ahead.Add(more);
        }
        line = _ahead[at];
        return true;
    }
}
