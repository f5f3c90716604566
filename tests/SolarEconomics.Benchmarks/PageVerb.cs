using SolarEconomics.Workbench.Tests;

namespace SolarEconomics.Benchmarks;

/// <summary><c>page</c>: how the page answers its reader, measured in the system's Chromium. Reported, never gated.</summary>
internal static class PageVerb
{
    internal static int Do(string[] options)
    {
        if (!File.Exists(WorkbenchAtWork.Dll) || Chromium.Path is null)
        {
            Console.Error.WriteLine($"Expected the program ({WorkbenchAtWork.Dll}: build the solution in the same configuration) and Chromium (apt-get install --no-install-recommends chromium), found {(Chromium.Path is null ? "no Chromium" : "no program")}.");
            return 2;
        }
        var versions = Machine.Describe();
        var lines = Lines().GetAwaiter().GetResult();
        if (options.Contains("--json")) Console.Out.Write(KeptRun.Json(new { versions, lines }));
        else foreach (var line in lines) Console.WriteLine($"{line.What,-100} {Words.Time(line.Seconds),8}{(line.LimitSeconds is { } limit ? $"   limit {Words.Time(limit)}" : "")}");
        if (options.Contains("--keep")) KeptRun.Keep(Places.Results, versions, "page", lines);
        return 0;
    }

    private static async Task<List<StartLine>> Lines()
    {
        var first = await PageInBrowser.FirstAnswersAsync(Path.Combine(Places.Root, "notebooks", "01-has-it-paid-for-itself.ipynb"), 5);
        var typing = await Typing.AtManySteps(300);
        var scrolling = await Scrolling.PastCharts(60);
        var output = await LongOutput.OfCharacters(100_000_000);
        var session = await SessionWaits.Measure();
        return
        [
            new StartLine("`dotnet …/SolarEconomics.Workbench.dll open` until a running browser shows the first saved answer of notebook 01", Referee.Median([.. first]), 1.5),
            new StartLine("a key at 300 steps until all is drawn for it, median", Referee.Median([.. typing]), 0.016),
            new StartLine("a key at 300 steps until all is drawn for it, 95 of 100", Share(typing, 0.95), 0.016),
            new StartLine("a frame while 60 charts scroll past and are drawn, 95 of 100", Share(scrolling, 0.95), 0.034),
            new StartLine("longest stop of the page while an output of 100 MB arrives", output.LongestStop, 0.1),
            new StartLine("longest wait for the program's word meanwhile", output.LongestSilence, null),
            new StartLine("a fresh start from the warm spare", Referee.Median([.. session.FreshStarts]), 1.0),
            new StartLine("a step without code, from pressing to done on the page", Referee.Median([.. session.EmptySteps]), 0.03),
        ];
    }

    /// <summary>What a share of the measurements stays below.</summary>
    private static double Share(IReadOnlyList<double> measured, double share) => measured.Order().ElementAt((int)Math.Ceiling(share * measured.Count) - 1);
}
