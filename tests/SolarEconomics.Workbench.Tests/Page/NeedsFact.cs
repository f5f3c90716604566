using System.ComponentModel;
using System.Diagnostics;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A test that needs a program of this machine. Without it the test is skipped with the command that installs it; where everything is required, it runs and fails.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NeedsFact : FactAttribute
{
    public NeedsFact(string program, string argument, string install)
    {
        var requiresAll = Environment.GetEnvironmentVariable("SOLARECONOMICS_REQUIRE_ALL") == "1";
        if (!requiresAll && !Starts(program, argument)) Skip = $"Needs {program}: {install}";
    }

    private static bool Starts(string program, string argument)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, argument) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false });
            return process is not null;
        }
        catch (Win32Exception)
        {
            // There is no such program.
            return false;
        }
    }
}
