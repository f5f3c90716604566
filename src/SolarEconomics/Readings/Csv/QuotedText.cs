namespace SolarEconomics;

/// <summary>Where quoted fields of a line begin and end.</summary>
internal static class QuotedText
{
    /// <summary>How a line ends.</summary>
    internal enum LineEnd
    {
        /// <summary>Outside quotes: the row ends with the line.</summary>
        Closed,

        /// <summary>Inside a quoted field, which may go on below.</summary>
        Open,

        /// <summary>A mark closes the field that came from above, but no field ends there: the field never was one over several lines.</summary>
        Broken,
    }

    /// <summary>Goes through a line. A mark opens a field only where the field begins with it, and closes it only where the field ends there.</summary>
    /// <param name="line">One line without its end.</param>
    /// <param name="delimiters">Marks between fields, one where the table's is known.</param>
    /// <param name="inside">Whether the line begins inside a quoted field.</param>
    /// <param name="field">Number of the field in which the line ends, counted from 1.</param>
    internal static LineEnd EndOf(ReadOnlySpan<char> line, ReadOnlySpan<char> delimiters, bool inside, out int field)
    {
        field = 1;
        var (at, fromAbove) = (0, inside);
        while (true)
        {
            if (inside || (at < line.Length && line[at] == '"'))
            {
                if (!inside) at++;
                if (!TryClose(line, ref at)) return LineEnd.Open;
                var rest = line[at..].TrimStart(' ');
                if (fromAbove && !rest.IsEmpty && !delimiters.Contains(rest[0])) return LineEnd.Broken;
                (inside, fromAbove) = (false, false);
            }
            var next = line[at..].IndexOfAny(delimiters);
            if (next < 0) return LineEnd.Closed;
            at += next + 1;
            field++;
        }
    }

    /// <summary>Goes behind the mark that closes a field; two marks stand for one that belongs to it.</summary>
    private static bool TryClose(ReadOnlySpan<char> line, ref int at)
    {
        while (true)
        {
            var mark = line[at..].IndexOf('"');
            if (mark < 0) return false;
            at += mark + 1;
            if (at == line.Length || line[at] != '"') return true;
            at++;
        }
    }
}
