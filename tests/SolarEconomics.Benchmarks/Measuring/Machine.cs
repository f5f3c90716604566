using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SolarEconomics.Benchmarks;

/// <summary>What the numbers were measured on.</summary>
internal static class Machine
{
    internal static readonly string[] PythonModules = ["numpy", "pandas", "scipy"];
    private static readonly Dictionary<string, string?> s_versions = [];

    internal static string Processor => File.Exists("/proc/cpuinfo")
        ? File.ReadLines("/proc/cpuinfo").FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[1].Trim() ?? "unknown processor"
        : Environment.GetEnvironmentVariable("PROCESSOR_IDENTIFIER") ?? "unknown processor";

    internal static int VectorBits => Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : Vector128.IsHardwareAccelerated ? 128 : 64;

    internal static Versions Describe() => new()
    {
        Processor = Processor,
        Cores = Environment.ProcessorCount,
        VectorBits = VectorBits,
        System = RuntimeInformation.OSDescription,
        Date = DateTimeOffset.UtcNow.ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture),
        LoadAtStart = LoadAverage(),
        Programs = Programs().ToDictionary(StringComparer.Ordinal),
    };

    /// <summary>Version of a Python module, or null where it is not installed.</summary>
    internal static string? VersionOf(string module)
    {
        if (s_versions.TryGetValue(module, out var known)) return known;
        return s_versions[module] = Ask($"import {module}; print({module}.__version__)");
    }

    private static IEnumerable<KeyValuePair<string, string>> Programs()
    {
        yield return new(".NET", Environment.Version.ToString());
        yield return new("SolarEconomics", typeof(Readings).Assembly.GetName().Version!.ToString(3));
        foreach (var type in (Type[])[typeof(CsvHelper.CsvReader), typeof(nietras.SeparatedValues.Sep), typeof(NodaTime.Instant), typeof(MathNet.Numerics.FindRoots)])
            yield return new(type.Assembly.GetName().Name!, type.Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0]);
        yield return new("Python", Ask("import platform; print(platform.python_version())") ?? "not installed");
        foreach (var module in PythonModules) yield return new(module, VersionOf(module) ?? "not installed");
    }

    private static double? LoadAverage() => File.Exists("/proc/loadavg")
        ? double.Parse(File.ReadAllText("/proc/loadavg").Split(' ')[0], CultureInfo.InvariantCulture) : null;

    private static string? Ask(string code)
    {
        if (!File.Exists(PythonPeer.Python)) return null;
        using var process = Process.Start(new ProcessStartInfo(PythonPeer.Python, ["-c", code]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var answer = process.StandardOutput.ReadToEnd().Trim();
        process.WaitForExit();
        return process.ExitCode == 0 ? answer : null;
    }
}
