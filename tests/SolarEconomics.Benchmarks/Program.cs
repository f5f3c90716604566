using BenchmarkDotNet.Running;
using SolarEconomics.Benchmarks;

return args switch
{
    ["ratios", .. var options] => RatiosVerb.Do(options),
    ["start", .. var options] => StartVerb.Do(options),
    ["page", .. var options] => PageVerb.Do(options),
    ["readme"] => ReadmeVerb.Do(),
    ["measure", .. var options] => Measure(options),
    ["cold-read", var path] => Cold(() => ColdMode.Read(path)),
    ["cold-call"] => Cold(ColdMode.Call),
    ["cold-hello"] => Cold(() => Console.WriteLine(0)),
    _ => Usage(),
};

// In methods of their own: a fresh process that is timed loads nothing of what it does not use.
static int Measure(string[] options)
{
    BenchmarkSwitcher.FromAssembly(typeof(RatiosVerb).Assembly).Run(options);
    return 0;
}

static int Cold(Action work)
{
    work();
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("""
        ratios [--json] [--quick] [--only NAME] [--keep]   our time beside the peers', in one run
        start [--json] [--keep]                            how long a person waits for the program
        page [--json] [--keep]                             how the page answers in a browser: typing, scrolling, long output, session
        readme                                             writes the README's speed table from the kept results
        measure [options of BenchmarkDotNet]               time and memory in detail, against the .NET peers
        --quick takes small sizes, --keep writes results/ for the README.
        """);
    return 2;
}
