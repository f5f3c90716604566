using System.Buffers;

namespace SolarEconomics;

/// <summary>Lines of a text, cut where one is longer than any row, so that a file without line ends cannot fill memory.</summary>
/// <remarks>A line ends at a line feed, a carriage return, or both.</remarks>
/// <param name="text">The text.</param>
internal sealed class TextLines(TextReader text)
{
    /// <summary>As in <see cref="Utf8Lines"/>. Unit: letters.</summary>
    private const int LongestLine = 16 << 20;

    private readonly char[] _block = new char[1 << 15];
    private int _from;
    private int _to;
    private bool _afterReturn;

    internal string? Next()
    {
        ArrayBufferWriter<char>? parts = null;
        while (true)
        {
            if (_from == _to && !TryFill()) return parts?.WrittenSpan.ToString();
            if (_afterReturn && _block[_from] == '\n')
            {
                (_from, _afterReturn) = (_from + 1, false);
                continue;
            }
            _afterReturn = false;
            var rest = _block.AsSpan(_from, _to - _from);
            var end = rest.IndexOfAny('\r', '\n');
            var part = end < 0 ? rest : rest[..end];
            _from += part.Length;
            if (end >= 0) _afterReturn = _block[_from++] == '\r';
            if (end >= 0 && parts is null) return part.ToString();
            (parts ??= new ArrayBufferWriter<char>()).Write(part);
            if (end >= 0 || parts.WrittenCount >= LongestLine) return parts.WrittenSpan.ToString();
        }
    }

    private bool TryFill()
    {
        (_from, _to) = (0, text.Read(_block));
        return _to > 0;
    }
}
