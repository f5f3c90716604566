namespace SolarEconomics;

/// <summary>A file of records on disk, with its first bytes at hand so that a reader can tell whether it is of its kind.</summary>
public sealed class RecordFile
{
    private const int HeadBytes = 64 * 1024;

    private readonly byte[] _head;
    private readonly string _content;

    private RecordFile(string path, string name, string content, long length, byte[] head)
    {
        (Path, Name, _content, Length, _head) = (path, name, content, length, head);
    }

    /// <summary>Path as the user gave it.</summary>
    public string Path { get; }

    /// <summary>Name of the file without its folder, as messages show it.</summary>
    public string Name { get; }

    /// <summary>Length in bytes, above 0.</summary>
    public long Length { get; }

    /// <summary>The first 64 KiB, or the whole of a shorter file.</summary>
    public ReadOnlySpan<byte> Head => _head;

    /// <summary>Opens the file for reading from its start.</summary>
    public Stream Open() => new FileStream(_content, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 1, FileOptions.SequentialScan);

    /// <summary>Looks at a file.</summary>
    /// <param name="path">Path, absolute or from the working folder.</param>
    /// <exception cref="RecordException">There is no such file, it is a folder, it may not be read, or it is empty.</exception>
    public static RecordFile At(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (string.IsNullOrWhiteSpace(path)) throw Throw.NoFile(path);
        if (Directory.Exists(path)) throw Throw.FolderInsteadOfFile(path);
        if (!File.Exists(path)) throw Throw.NoFile(path);
        return Of(path, System.IO.Path.GetFileName(path), path);
    }

    /// <summary>The content of a file after it was turned into another form, as a sheet of a workbook into a table of text.</summary>
    /// <param name="path">Path of the user's file.</param>
    /// <param name="name">Name that messages show, for example <c>meter.xlsx [Sheet1]</c>.</param>
    /// <param name="content">Path of the file that holds the other form; it must stay there until the record is read.</param>
    /// <exception cref="RecordException">There is nothing in it.</exception>
    public static RecordFile Converted(string path, string name, string content)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        return Of(path, name, content);
    }

    private static RecordFile Of(string path, string name, string content)
    {
        try
        {
            using var stream = new FileStream(content, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (stream.Length == 0) throw Throw.EmptyFile(path);
            var head = new byte[(int)Math.Min(HeadBytes, stream.Length)];
            var read = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
            return new RecordFile(path, name, content, stream.Length, head[..read]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Throw.FileNotReadable(path, e);
        }
    }
}
