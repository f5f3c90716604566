using System.Buffers.Binary;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace SolarEconomics.Notebook;

/// <summary>JSON messages over a stream, each after its length, so that a message is whole or not there.</summary>
/// <remarks>The stream is a pipe of its own: what code or a native library prints cannot get between the messages.</remarks>
internal sealed class MessagePipe(Stream stream) : IDisposable
{
    /// <summary>Longest message in bytes; a longer one is a fault of the other side.</summary>
    internal const int Most = 128 * 1024 * 1024;

    // Between two processes of ours: outputs keep their letters on the way, so that a saved notebook shows "<" and "€" as themselves.
    private static readonly JsonSerializerOptions Options = new() { MaxDepth = 256, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private readonly Lock writing = new();

    /// <summary>Sends one message.</summary>
    /// <exception cref="IOException">The other side is gone.</exception>
    internal void Send<T>(T message) => SendBytes(Encode(message));

    internal static byte[] Encode<T>(T message) => JsonSerializer.SerializeToUtf8Bytes(message, Options);

    internal void SendBytes(byte[] message)
    {
        Span<byte> length = stackalloc byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, message.Length);
        lock (writing)
        {
            stream.Write(length);
            stream.Write(message);
            stream.Flush();
        }
    }

    /// <summary>Waits for the next message; <see langword="null"/> once the other side has closed.</summary>
    internal T? Receive<T>() where T : class
    {
        Span<byte> length = stackalloc byte[4];
        if (stream.ReadAtLeast(length, 4, throwOnEndOfStream: false) < 4) return null;
        var size = BinaryPrimitives.ReadInt32LittleEndian(length);
        if (size is < 0 or > Most) throw new InvalidDataException(FormattableString.Invariant($"Found a message of {size} bytes between the processes of a session, expected at most {Most}."));
        var message = new byte[size];
        if (stream.ReadAtLeast(message, size, throwOnEndOfStream: false) < size) return null;
        return JsonSerializer.Deserialize<T>(message, Options);
    }

    public void Dispose() => stream.Dispose();
}
