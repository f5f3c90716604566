using System.Reflection;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The notebooks that came with this program, known by the copies inside it: as long as nobody changed their code, they run like the program itself.</summary>
internal static class Shipped
{
    private static readonly Lazy<HashSet<string>> Read = new(() =>
    {
        var program = Assembly.GetExecutingAssembly();
        return program.GetManifestResourceNames().Where(name => name.EndsWith(".ipynb", StringComparison.Ordinal)).Select(name => CodeOf(program, name)).ToHashSet(StringComparer.Ordinal);
    });

    public static IReadOnlySet<string> Codes => Read.Value;

    private static string CodeOf(Assembly program, string name)
    {
        using var reader = new StreamReader(program.GetManifestResourceStream(name)!);
        return CodeHash.Of(NotebookDocument.Parse(reader.ReadToEnd(), name));
    }
}
