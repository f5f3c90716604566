using System.Security.Cryptography;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Puts a notebook on the disk, and never over a file that somebody else changed meanwhile.</summary>
internal sealed class Keeper(string path, TimeProvider time)
{
    private string known = Fingerprint(path);

    /// <summary>The file saved to; another one beside it once the first was changed from outside.</summary>
    public string Path { get; private set; } = path;

    /// <summary>Saves, and says so or why not.</summary>
    public string Save(NotebookDocument document)
    {
        try
        {
            var moved = MoveAsideIfChanged();
            document.Save(Path);
            known = Fingerprint(Path);
            return moved + string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Saved {time.GetLocalNow():HH:mm}");
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            LocalLog.Current.Write(failure);
            return $"Not saved: {failure.Message}";
        }
    }

    private string MoveAsideIfChanged()
    {
        var now = Fingerprint(Path);
        if (now == known || now.Length == 0) return "";
        var name = System.IO.Path.GetFileNameWithoutExtension(Path);
        Path = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(Path)!, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name} (page {time.GetLocalNow():yyyy-MM-dd HHmmss}).ipynb"));
        return $"The file was changed by another program: both are kept, this one as {System.IO.Path.GetFileName(Path)}. ";
    }

    private static string Fingerprint(string file) => File.Exists(file) ? Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file))) : "";
}
