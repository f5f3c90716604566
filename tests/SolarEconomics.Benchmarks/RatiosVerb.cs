namespace SolarEconomics.Benchmarks;

/// <summary><c>ratios</c>: makes the work from fixed seeds, times peers and project in turn, prints the table.</summary>
internal static class RatiosVerb
{
    internal static int Do(string[] options)
    {
        if (Unknown(options) is { } unknown)
        {
            Console.Error.WriteLine($"Found {unknown}, expected --json, --quick, --keep or --only NAME.");
            return 2;
        }
        if (options.Contains("--quick") && options.Contains("--keep"))
        {
            Console.Error.WriteLine("Found --quick with --keep, expected one of them: small sizes are not results to keep.");
            return 2;
        }
        var quick = options.Contains("--quick");
        var only = Array.IndexOf(options, "--only") is >= 0 and var at && at + 1 < options.Length ? options[at + 1] : null;
        var versions = Machine.Describe();
        var lines = new List<RatioLine>();
        foreach (var (name, make) in AllWork.List(quick).Where(w => only is null || w.Name.Contains(only, StringComparison.OrdinalIgnoreCase)))
        {
            using var comparison = make();
            Console.Error.WriteLine($"{name}: {comparison.Work}");
            lines.AddRange(Referee.Judge(comparison, quick ? 3 : 5));
        }
        if (lines.Count == 0)
        {
            Console.Error.WriteLine($"Found no work called {only}, expected one of {string.Join(", ", AllWork.List(quick).Select(w => w.Name).Distinct(StringComparer.Ordinal))}.");
            return 2;
        }
        Console.Out.Write(options.Contains("--json") ? KeptRun.Json(new { versions, lines }) : RatioTable.Of(versions, lines));
        if (options.Contains("--keep")) KeptRun.Keep(Places.Results, versions, "ratios", lines);
        return 0;
    }

    private static string? Unknown(string[] options) =>
        options.Where((option, i) => option is not ("--json" or "--quick" or "--only" or "--keep") && (i == 0 || options[i - 1] != "--only")).FirstOrDefault();
}
