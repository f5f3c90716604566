using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Microsoft.Win32.SafeHandles;

namespace SolarEconomics.Notebook;

/// <summary>Replaces a file so that a crash or power cut leaves the old one or the new one. All that differs by platform stands here.</summary>
public static partial class AtomicFile
{
    /// <summary>Writes a file: a temporary one beside it, flushed to the disk, takes its name.</summary>
    /// <param name="path">Path of the file; its folder exists. A link is followed, so the file it points at is replaced.</param>
    /// <param name="content">What the file holds afterwards.</param>
    /// <exception cref="IOException">The disk is full, or the file is in use.</exception>
    /// <exception cref="UnauthorizedAccessException">File or folder may not be written.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var full = Path.GetFullPath(path);
        var target = (File.Exists(full) ? File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName : null) ?? full;
        var folder = Path.GetDirectoryName(target)!;
        RefuseReadOnly(target);
        var temporary = Path.Combine(folder, $".{Path.GetFileName(target)}.{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(4))}.tmp");
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }
            KeepMode(target, temporary);
            File.Move(temporary, target, overwrite: true);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
        FlushFolder(folder);
    }

    /// <summary>Removes what programs that were killed while they wrote a file left beside it.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="IOException">A file is in use.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void RemoveHalves(string path)
    {
        var full = Path.GetFullPath(path);
        foreach (var half in Directory.EnumerateFiles(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.????????.tmp").ToList())
        {
            // A young one may be in the hands of another program.
            if (DateTime.UtcNow - File.GetLastWriteTimeUtc(half) > TimeSpan.FromHours(1)) File.Delete(half);
        }
    }

    // A rename needs no right on the file itself, so a read-only one would be replaced without a word.
    private static void RefuseReadOnly(string target)
    {
        var file = new FileInfo(target);
        if (file is { Exists: true, IsReadOnly: true }) throw Throw.ReadOnly(target);
    }

    private static void KeepMode(string target, string temporary)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(target)) File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
    }

    // On Linux and macOS the new name itself is on the disk only once its folder is. Windows writes it with the file.
    private static void FlushFolder(string folder)
    {
        if (OperatingSystem.IsWindows()) return;
        var handle = Open(folder, 0);
        if (handle < 0) return;
        using var open = new SafeFileHandle(handle, ownsHandle: true);
        _ = Fsync(handle);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Fsync(int handle);
}
