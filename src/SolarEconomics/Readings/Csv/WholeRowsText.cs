namespace SolarEconomics;

/// <summary>The text of a table with every row on one line, for the general reader.</summary>
/// <param name="rows">The lines.</param>
internal sealed class WholeRowsText(WholeRows rows) : TextReader
{
    private string _line = "";
    private int _at;

    // Whether the line and its end were given.
    private bool _over = true;

    public override int Peek() => TryLine() ? _at < _line.Length ? _line[_at] : '\n' : -1;

    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 0 ? -1 : one[0];
    }

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int Read(Span<char> buffer)
    {
        var written = 0;
        while (written < buffer.Length && TryLine())
        {
            var part = Math.Min(_line.Length - _at, buffer.Length - written);
            _line.AsSpan(_at, part).CopyTo(buffer[written..]);
            (_at, written) = (_at + part, written + part);
            if (written == buffer.Length) break;
            buffer[written++] = '\n';
            _over = true;
        }
        return written;
    }

    public override int ReadBlock(Span<char> buffer) => Read(buffer);

    public override string? ReadLine()
    {
        if (!TryLine()) return null;
        _over = true;
        return _line[_at..];
    }

    private bool TryLine()
    {
        if (!_over) return true;
        if (rows.Next() is not { } line) return false;
        (_line, _at, _over) = (ReferenceEquals(line, WholeRows.Joined) ? "" : line, 0, false);
        return true;
    }
}
