using System.Diagnostics;

namespace SolarEconomics.Notebook.Tests;

/// <summary>A test that asks the reference library of the file format (Debian: python3-nbformat); skipped, and said so, where it is not installed.</summary>
public sealed class NbformatFactAttribute : FactAttribute
{
    internal const string Python = "/usr/bin/python3";

    private static readonly Lazy<bool> IsThere = new(() =>
    {
        if (!File.Exists(Python)) return false;
        using var asking = Process.Start(new ProcessStartInfo(Python, ["-c", "import nbformat"]) { RedirectStandardError = true, UseShellExecute = false })!;
        asking.WaitForExit();
        return asking.ExitCode == 0;
    });

    public NbformatFactAttribute()
    {
        if (!IsThere.Value) Skip = "python3-nbformat is not installed.";
    }
}
