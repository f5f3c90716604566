using System.Reflection;

namespace SolarEconomics.Notebook;

/// <summary>The version that notebooks carry.</summary>
internal static class Library
{
    /// <summary>Version of the library without the mark of the source revision.</summary>
    internal static string Version { get; } =
        (typeof(Finding).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0.0.0").Split('+')[0];
}
