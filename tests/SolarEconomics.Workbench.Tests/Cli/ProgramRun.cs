using System.Diagnostics;
using System.Text;

namespace SolarEconomics.Workbench.Tests;

/// <summary>What the program printed, and the code it ended with.</summary>
internal sealed record ProgramRun(int Code, string Out, string Error)
{
    /// <summary>Starts the program as a person does, and waits for its end.</summary>
    public static async Task<ProgramRun> Of(string folder, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [RunningProgram.Dll, .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            UseShellExecute = false,
        })!;
        var (said, complained) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return new(process.ExitCode, (await said).ReplaceLineEndings("\n"), (await complained).ReplaceLineEndings("\n"));
    }
}
