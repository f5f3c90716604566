namespace SolarEconomics;

/// <summary>A file that is replaced whole, or not at all: written beside the old one, then put in its place.</summary>
internal static class ReplacedFile
{
    /// <param name="path">The file.</param>
    /// <param name="write">Writes it under the path that it is given.</param>
    internal static void Write(string path, Action<string> write)
    {
        var beside = path + ".writing";
        try
        {
            write(beside);
            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
