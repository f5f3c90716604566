using System.Text;

namespace SolarEconomics.Charts;

/// <summary>Files that stand inside this assembly.</summary>
internal static class Carried
{
    internal static Stream Open(string name) =>
        typeof(Carried).Assembly.GetManifestResourceStream(name) ?? throw Throw.NothingCarried(name);

    internal static string Text(string name)
    {
        using var reader = new StreamReader(Open(name), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
