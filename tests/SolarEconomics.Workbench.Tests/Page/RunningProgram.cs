using System.Diagnostics;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The program as a reader starts it: a process of its own, which prints one address.</summary>
internal sealed class RunningProgram : IAsyncDisposable
{
    private readonly Process process;

    private RunningProgram(Process process, string address) => (this.process, Address) = (process, address);

    public static string Dll { get; } = Path.Combine(AppContext.BaseDirectory, "SolarEconomics.Workbench.dll");

    /// <summary>The address with its one-time token.</summary>
    public string Address { get; }

    public int Id => process.Id;

    /// <summary>Opens a notebook; what the program keeps per user stands in a folder that the tests share, not in the tester's own.</summary>
    public static Task<RunningProgram> OpenAsync(string notebook, string? state = null) => StartAsync("dotnet", [Dll, "open", notebook, "--no-browser"], notebook, state);

    /// <summary>Starts the program through another one that prepares its surroundings.</summary>
    public static async Task<RunningProgram> StartAsync(string first, string[] arguments, string notebook, string? state = null)
    {
        var start = new ProcessStartInfo(first, arguments)
        {
            WorkingDirectory = Path.GetDirectoryName(notebook)!, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
        };
        start.Environment[StateFolder.Variable] = state ?? OwnState.Folder;
        var process = Process.Start(start)!;
        var said = process.StandardError.ReadToEndAsync();
        var address = await process.StandardOutput.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(60));
        return address is not null ? new RunningProgram(process, address) : throw new InvalidOperationException($"The program printed no address: {await said}");
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }
}
