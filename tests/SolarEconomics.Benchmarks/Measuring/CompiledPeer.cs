using System.Diagnostics;
using System.Text.Json;

namespace SolarEconomics.Benchmarks;

/// <summary>A C++ program of peers/, built here once by g++, in a process that stays: each line sent to it is one timed run.</summary>
internal sealed class CompiledPeer : Contender
{
    private const string Compiler = "/usr/bin/g++";

    private readonly Process? _process;

    internal CompiledPeer(string name, string source, string options, params string[] arguments)
        : base(name)
    {
        if (!File.Exists(Compiler))
        {
            Missing = "not installed: apt-get install g++";
            return;
        }
        var program = Places.Made(Path.GetFileNameWithoutExtension(source));
        using (var build = Process.Start(Compiler, [.. options.Split(' '), "-std=c++17", "-o", program, PythonPeer.PathOf(source)]))
        {
            build.WaitForExit();
            if (build.ExitCode != 0) throw new InvalidOperationException($"g++ could not build peers/{source}; its message stands above.");
        }
        _process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true })
            ?? throw new InvalidOperationException($"{program} did not start.");
        if (_process.StandardOutput.ReadLine() != "ready") throw new InvalidOperationException($"peers/{source} ended before it was ready; its message stands above.");
    }

    internal override string? Missing { get; }

    internal override Timed Run()
    {
        _process!.StandardInput.WriteLine("run");
        var line = _process.StandardOutput.ReadLine() ?? throw new InvalidOperationException($"{Name} ended in the middle of its work; its message stands above.");
        return JsonSerializer.Deserialize<Timed>(line, JsonSerializerOptions.Web)!;
    }

    public override void Dispose()
    {
        _process?.StandardInput.Close();
        _process?.WaitForExit();
        _process?.Dispose();
    }
}
