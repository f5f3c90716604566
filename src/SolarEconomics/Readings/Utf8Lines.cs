namespace SolarEconomics;

/// <summary>Cuts a stream of UTF-8 into lines without making a string of any: one block is filled again and again, small enough to stay in the processor's cache.</summary>
/// <remarks>A line ends at a line feed, with or without a carriage return before it. A byte order mark in front is left out.</remarks>
internal sealed class Utf8Lines(Stream stream, int blockBytes = 1 << 18)
{
    /// <summary>A line longer than this is no row of readings: it is cut, so that a file without line ends cannot fill memory.</summary>
    private const int LongestLine = 16 << 20;

    private byte[] _block = new byte[blockBytes];
    private int _from;
    private int _to;
    private int _lineFrom;
    private bool _ended;

    /// <summary>Number of the line given last, counted from 1.</summary>
    internal int Line { get; private set; }

    /// <summary>Bytes taken from the stream so far, for progress.</summary>
    internal long BytesRead { get; private set; }

    /// <summary>Place in the stream at which the line given last begins. Unit: bytes. Valid until more is read.</summary>
    internal long LineStart => BytesRead - (_to - _lineFrom);

    /// <summary>Gives the next line, without its end. The span is valid until the next call.</summary>
    internal bool TryNext(out ReadOnlySpan<byte> line)
    {
        var searched = 0;
        while (true)
        {
            var rest = Rest;
            var at = rest[searched..].IndexOf((byte)'\n');
            if (at >= 0)
            {
                at += searched;
                line = WithoutReturn(rest[..at]);
                _lineFrom = _from;
                _from += at + 1;
                Line++;
                return true;
            }
            if (_ended || rest.Length >= LongestLine)
            {
                line = WithoutReturn(rest);
                _lineFrom = _from;
                _from = _to;
                if (rest.IsEmpty) return false;
                Line++;
                return true;
            }
            searched = rest.Length;
            Fill();
        }
    }

    /// <summary>Gives all whole lines that are at hand, with their ends, without going on; empty at the end of the stream and before a line that does not fit.</summary>
    /// <remarks>The span is valid until the next call of <see cref="TryNext"/> or of this.</remarks>
    internal ReadOnlySpan<byte> WholeLines()
    {
        var end = Rest.LastIndexOf((byte)'\n') + 1;
        if (end > 0 || _ended) return Rest[..end];
        Fill();
        return Rest[..(Rest.LastIndexOf((byte)'\n') + 1)];
    }

    /// <summary>Goes on behind lines that were read out of <see cref="WholeLines"/>.</summary>
    internal void Skip(int bytes, int lines)
    {
        _from += bytes;
        Line += lines;
    }

    private ReadOnlySpan<byte> Rest => _block.AsSpan(_from, _to - _from);

    private void Fill()
    {
        var rest = _to - _from;
        if (rest == _block.Length) Array.Resize(ref _block, _block.Length * 2);
        if (_from > 0) _block.AsSpan(_from, rest).CopyTo(_block);
        (_from, _to) = (0, rest);
        var read = stream.Read(_block, _to, _block.Length - _to);
        if (read == 0) _ended = true;
        if (BytesRead == 0 && _block.AsSpan(0, read).StartsWith(new byte[] { 0xEF, 0xBB, 0xBF })) _from = 3;
        BytesRead += read;
        _to += read;
    }

    private static ReadOnlySpan<byte> WithoutReturn(ReadOnlySpan<byte> line) =>
        line.Length > 0 && line[^1] == (byte)'\r' ? line[..^1] : line;
}
