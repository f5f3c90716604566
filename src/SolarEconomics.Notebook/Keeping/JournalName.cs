using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>Where journals stand: beside the notebook, under a name that lists usually leave out.</summary>
internal static class JournalName
{
    private const string End = ".journal";

    internal static string Of(string notebook, int number) =>
        Path.Combine(Folder(notebook), string.Create(CultureInfo.InvariantCulture, $".{Path.GetFileName(notebook)}{(number == 1 ? "" : $".{number}")}{End}"));

    /// <summary>All journals of a notebook, whoever wrote them.</summary>
    internal static IEnumerable<string> AllOf(string notebook) =>
        Directory.EnumerateFiles(Folder(notebook), $".{Path.GetFileName(notebook)}*{End}").Where(path => IsOf(notebook, Path.GetFileName(path))).Order(StringComparer.Ordinal);

    private static bool IsOf(string notebook, string name)
    {
        var middle = name[(Path.GetFileName(notebook).Length + 1)..^End.Length];
        return middle.Length == 0 || (middle[0] == '.' && middle.Length > 1 && middle[1..].All(char.IsAsciiDigit));
    }

    private static string Folder(string notebook) => Path.GetDirectoryName(Path.GetFullPath(notebook))!;
}
