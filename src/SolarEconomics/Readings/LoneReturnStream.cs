namespace SolarEconomics;

/// <summary>A text whose lines end with a carriage return alone, as old programs wrote it, read with line feeds in their place.</summary>
/// <param name="inner">The text, in which no line feed stands. Closed with this.</param>
internal sealed class LoneReturnStream(Stream inner) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => inner.Length;

    public override long Position
    {
        get => inner.Position;
        set => throw new NotSupportedException("Found a jump in a text that is read from its start to its end, expected none.");
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        buffer[..read].Replace((byte)'\r', (byte)'\n');
        return read;
    }

    public override void Flush() => inner.Flush();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException("Found a jump in a text that is read from its start to its end, expected none.");

    public override void SetLength(long value) => throw new NotSupportedException("Found a change of the length of a text that is only read, expected none.");

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException("Found a change of a text that is only read, expected none.");

    protected override void Dispose(bool disposing)
    {
        if (disposing) inner.Dispose();
        base.Dispose(disposing);
    }
}
