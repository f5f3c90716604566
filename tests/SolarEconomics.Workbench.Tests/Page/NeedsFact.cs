using System.ComponentModel;
using System.Diagnostics;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A test that needs a program of this machine. Without it the test is skipped with the command that installs it; where everything is required, it runs and fails, unless no installation could bring what it needs.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NeedsFact : FactAttribute
{
    public NeedsFact(string program, string argument, string install, bool canBeInstalled = true)
    {
        var requiresAll = Environment.GetEnvironmentVariable("SOLARECONOMICS_REQUIRE_ALL") == "1";
        if (!(requiresAll && canBeInstalled) && !Starts(program, argument)) Skip = $"Needs {program}: {install}";
    }

    private static bool Starts(string program, string argument)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, argument) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (Win32Exception)
        {
            // There is no such program.
            return false;
        }
    }
}
