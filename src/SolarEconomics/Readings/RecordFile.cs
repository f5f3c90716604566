namespace SolarEconomics;

/// <summary>A file of records on disk, with its first bytes at hand so that a reader can tell whether it is of its kind.</summary>
public sealed class RecordFile
{
    private const int HeadBytes = 64 * 1024;

    private RecordFile(string path, long length, byte[] head)
    {
        Path = path;
        Length = length;
        _head = head;
    }

    private readonly byte[] _head;

    /// <summary>Path as the user gave it.</summary>
    public string Path { get; }

    /// <summary>Name of the file without its folder, as messages show it.</summary>
    public string Name => System.IO.Path.GetFileName(Path);

    /// <summary>Length in bytes, above 0.</summary>
    public long Length { get; }

    /// <summary>The first 64 KiB, or the whole of a shorter file.</summary>
    public ReadOnlySpan<byte> Head => _head;

    /// <summary>Opens the file for reading from its start.</summary>
    public Stream Open() => new FileStream(Path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 1, FileOptions.SequentialScan);

    /// <summary>Looks at a file.</summary>
    /// <param name="path">Path, absolute or from the working folder.</param>
    /// <exception cref="RecordException">There is no such file, it is a folder, it may not be read, or it is empty.</exception>
    public static RecordFile At(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (string.IsNullOrWhiteSpace(path)) throw Throw.NoFile(path);
        if (Directory.Exists(path)) throw Throw.FolderInsteadOfFile(path);
        if (!File.Exists(path)) throw Throw.NoFile(path);
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (stream.Length == 0) throw Throw.EmptyFile(path);
            var head = new byte[(int)Math.Min(HeadBytes, stream.Length)];
            var read = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
            return new RecordFile(path, stream.Length, head[..read]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Throw.FileNotReadable(path, e);
        }
    }
}
