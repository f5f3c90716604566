namespace SolarEconomics;

/// <summary>Cuts a stream of UTF-8 into lines without making a string of any: one block is filled again and again.</summary>
/// <remarks>A line ends at a line feed, with or without a carriage return before it. A byte order mark in front is left out.</remarks>
internal sealed class Utf8Lines(Stream stream, int blockBytes = 1 << 20)
{
    /// <summary>A line longer than this is no row of readings: it is cut, so that a file without line ends cannot fill memory.</summary>
    private const int LongestLine = 16 << 20;

    private byte[] _block = new byte[blockBytes];
    private int _from;
    private int _to;
    private bool _ended;

    /// <summary>Number of the line given last, counted from 1.</summary>
    internal int Line { get; private set; }

    /// <summary>Bytes taken from the stream so far, for progress.</summary>
    internal long BytesRead { get; private set; }

    /// <summary>Gives the next line, without its end. The span is valid until the next call.</summary>
    internal bool TryNext(out ReadOnlySpan<byte> line)
    {
        var searched = 0;
        while (true)
        {
            var rest = _block.AsSpan(_from, _to - _from);
            var at = rest[searched..].IndexOf((byte)'\n');
            if (at >= 0)
            {
                at += searched;
                line = WithoutReturn(rest[..at]);
                _from += at + 1;
                Line++;
                return true;
            }
            if (_ended || rest.Length >= LongestLine)
            {
                line = WithoutReturn(rest);
                _from = _to;
                if (rest.IsEmpty) return false;
                Line++;
                return true;
            }
            searched = rest.Length;
            Fill();
        }
    }

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
