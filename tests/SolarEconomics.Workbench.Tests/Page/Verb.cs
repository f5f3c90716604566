using System.Diagnostics;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Runs a verb as a person does: in a process of its own.</summary>
internal static class Verb
{
    /// <summary>The exit code, and all that was printed.</summary>
    public static async Task<(int Code, string Said)> RunAsync(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [RunningProgram.Dll, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
        var said = process.StandardOutput.ReadToEndAsync();
        var complained = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await said + await complained);
    }
}
