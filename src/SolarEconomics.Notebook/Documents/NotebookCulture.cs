using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>The culture in which results are written, as a notebook declares it.</summary>
public static class NotebookCulture
{
    /// <summary>The culture where a notebook declares none: point for decimals, day before month.</summary>
    public const string DefaultName = "en-IE";

    /// <summary>The culture of a name, with its published values (a reader's own settings change nothing).</summary>
    /// <param name="name">Name such as <c>en-IE</c> or <c>de-DE</c>; empty is the invariant culture.</param>
    /// <exception cref="CultureNotFoundException">No such culture.</exception>
    public static CultureInfo Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return CultureInfo.GetCultureInfo(name, predefinedOnly: true);
    }
}
