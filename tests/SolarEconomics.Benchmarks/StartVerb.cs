namespace SolarEconomics.Benchmarks;

/// <summary><c>start</c>: what a person waits for, beside a hello-world of the same runtime. Reported, never gated.</summary>
internal static class StartVerb
{
    private const int Runs = 5;
    private const string Notebook = "01-has-it-paid-for-itself.ipynb";

    internal static int Do(string[] options)
    {
        if (!File.Exists(WorkbenchAtWork.Dll))
        {
            Console.Error.WriteLine($"Found no {WorkbenchAtWork.Dll}, expected the program beside this one: build the solution in the same configuration.");
            return 2;
        }
        var versions = Machine.Describe();
        var lines = Lines();
        if (options.Contains("--json")) Console.Out.Write(KeptRun.Json(new { versions, lines }));
        else foreach (var line in lines) Console.WriteLine($"{line.What,-100} {line.Seconds,6:0.00} s{(line.LimitSeconds is { } limit ? $"   limit {limit:0.0} s" : "")}");
        if (options.Contains("--keep")) KeptRun.Keep(Places.Results, versions, "start", lines);
        return 0;
    }

    private static List<StartLine> Lines()
    {
        var hello = ColdProcess.Ours("hello", "cold-hello");
        var (hellos, waits) = (new List<double>(), new List<Waits>());
        for (var run = 0; run <= Runs; run++)
        {
            var seconds = hello.Run().Seconds;
            // Worked out on a copy: the program keeps answers in the notebook it opens.
            var wait = WorkbenchAtWork.Time(CopyOfNotebook()).GetAwaiter().GetResult();
            if (run == 0) continue;
            hellos.Add(seconds);
            waits.Add(wait);
        }
        double Median(Func<Waits, double> wait) => Referee.Median([.. waits.Select(wait)]);
        return
        [
            new StartLine("hello-world of the same runtime, start to end, for scale", Referee.Median(hellos), null),
            new StartLine("`dotnet …/SolarEconomics.Workbench.dll open` until its address answers", Median(w => w.Answering), 1.0),
            new StartLine("until the page has notebook 01 with its saved answers (drawing them not counted)", Median(w => w.Told), 1.5),
            new StartLine("first step's answer, asked for at once after that", Median(w => w.FirstAnswer), 4.0),
            new StartLine("each later step, beyond its own work", Median(w => w.PerLaterStep), 0.1),
            new StartLine("all answers of notebook 01, own work included", Median(w => w.AllAnswers), null),
        ];
    }

    private static string CopyOfNotebook()
    {
        var house = Places.Made("house");
        foreach (var folder in (string[])["notebooks", "data-demo"])
        {
            Directory.CreateDirectory(Path.Combine(house, folder));
            foreach (var file in Directory.EnumerateFiles(Path.Combine(Places.Root, folder)))
                File.Copy(file, Path.Combine(house, folder, Path.GetFileName(file)), overwrite: true);
        }
        return Path.Combine(house, "notebooks", Notebook);
    }
}
