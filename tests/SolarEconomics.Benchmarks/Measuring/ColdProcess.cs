using System.Diagnostics;
using System.Globalization;

namespace SolarEconomics.Benchmarks;

/// <summary>A whole fresh process, from its start to its end; it prints its checksum, numbers parted by blanks.</summary>
internal sealed class ColdProcess(string name, ProcessStartInfo start, string? missing = null) : Contender(name)
{
    internal override string? Missing => missing;

    /// <summary>This program in a mode of <see cref="Cold"/>.</summary>
    internal static ColdProcess Ours(string name, params IReadOnlyList<string> arguments) =>
        new(name, new ProcessStartInfo("dotnet", [typeof(ColdProcess).Assembly.Location, .. arguments]));

    internal static ColdProcess OfPython(string name, string script, params IReadOnlyList<string> arguments) =>
        new(name, PythonPeer.StartOf(script, arguments), File.Exists(PythonPeer.Python) && Machine.VersionOf("pandas") is not null ? null : "not installed: apt-get install python3-pandas");

    internal override Timed Run()
    {
        start.RedirectStandardOutput = true;
        var begin = Stopwatch.GetTimestamp();
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{start.FileName} did not start.");
        var printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var seconds = Stopwatch.GetElapsedTime(begin).TotalSeconds;
        if (process.ExitCode != 0) throw new InvalidOperationException($"{Name} ended with exit code {process.ExitCode}; its message stands above.");
        return new Timed(seconds, [.. printed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))]);
    }
}
