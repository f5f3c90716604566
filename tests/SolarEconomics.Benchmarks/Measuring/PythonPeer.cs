using System.Diagnostics;
using System.Text.Json;

namespace SolarEconomics.Benchmarks;

/// <summary>A script of peers/ in a process that stays: each line sent to it is one timed run on a warm heap.</summary>
internal sealed class PythonPeer : Contender
{
    internal const string Python = "/usr/bin/python3";

    private readonly Process? _process;

    internal PythonPeer(string name, string script, params string[] arguments)
        : base(name)
    {
        Missing = WhatIsMissing(script);
        if (Missing is not null) return;
        _process = Process.Start(StartOf(script, arguments)) ?? throw new InvalidOperationException($"{Python} did not start.");
        if (_process.StandardOutput.ReadLine() != "ready") throw new InvalidOperationException($"peers/{script} ended before it was ready; its message stands above.");
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

    internal static string PathOf(string script) => Path.Combine(Places.Project, "peers", script);

    internal static ProcessStartInfo StartOf(string script, params IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo(Python, [PathOf(script), .. arguments]) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true };
        // One thread each, and a heap that keeps its pages: giving them back between runs makes numpy and pandas look several times slower.
        foreach (var threads in (string[])["OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"]) start.Environment[threads] = "1";
        start.Environment["MALLOC_MMAP_THRESHOLD_"] = "4294967296";
        start.Environment["MALLOC_TRIM_THRESHOLD_"] = "4294967296";
        start.Environment["MALLOC_TOP_PAD_"] = "268435456";
        start.Environment["PYTHONWARNINGS"] = "ignore";
        return start;
    }

    private static string? WhatIsMissing(string script)
    {
        if (!File.Exists(Python)) return "not installed: apt-get install python3 python3-numpy python3-pandas python3-scipy";
        var code = File.ReadAllText(PathOf(script));
        var missing = Array.Find(Machine.PythonModules, module => (code.Contains("import " + module, StringComparison.Ordinal) || code.Contains("from " + module, StringComparison.Ordinal)) && Machine.VersionOf(module) is null);
        return missing is null ? null : $"not installed: apt-get install python3-{missing}";
    }
}
