using System.Reflection;

namespace SolarEconomics.Notebook;

/// <summary>The assemblies that a notebook may use without a <c>#r</c> line.</summary>
internal static class Preloaded
{
    private static readonly string[] Names =
    [
        "SolarEconomics", "SolarEconomics.Charts", "SolarEconomics.Files", "SolarEconomics.Solvers", "SolarEconomics.Notebook", "NodaTime", "Deedle", "FSharp.Core", "MathNet.Numerics",
        "Plotly.NET", "Plotly.NET.CSharp", "DynamicObj", "Giraffe.ViewEngine",
    ];

    internal static IEnumerable<string> AssemblyPaths => Names.Select(n => Assembly.Load(n).Location);
}
