namespace SolarEconomics.Workbench;

/// <summary>Why a file could not be written, in words, with what the reader can do.</summary>
internal static class DiskWords
{
    // ENOSPC, EDQUOT and EROFS on Linux and macOS; ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL on Windows.
    private static readonly int[] Full = [28, 122, 69, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    private const int ReadOnlyDisk = 30;

    public static bool Is(Exception failure) => failure is IOException or UnauthorizedAccessException;

    public static string Of(Exception failure, string path) => failure switch
    {
        IOException full when Full.Contains(full.HResult) => $"The disk that holds {Folder(path)} is full. Free some space; saving is tried again by itself.",
        IOException { HResult: ReadOnlyDisk } => $"{Folder(path)} is on a disk that may not be written. {Copy}",
        UnauthorizedAccessException when new FileInfo(path) is { Exists: true, IsReadOnly: true } => $"{Path.GetFileName(path)} is read-only. Allow writing to it, and saving is tried again by itself. {Copy}",
        UnauthorizedAccessException => $"{Folder(path)} may not be written by you. {Copy}",
        DirectoryNotFoundException => $"{Folder(path)} is gone. {Copy}",
        _ => failure.Message,
    };

    private const string Copy = "Notebook, Keep a copy of the notebook, saves it through the browser to where you like.";

    private static string Folder(string path) => Path.GetDirectoryName(Path.GetFullPath(path)) ?? path;
}
