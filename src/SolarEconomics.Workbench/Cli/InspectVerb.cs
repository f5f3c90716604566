using System.CommandLine;
using System.Globalization;

namespace SolarEconomics.Workbench;

/// <summary><c>inspect FILE…</c>: says what was read from records, per channel, and how far it can be trusted.</summary>
internal static class InspectVerb
{
    public static Command Make(Io io)
    {
        var files = new Argument<string[]>("FILE") { Description = "Records: a table of intervals or counters (.csv, .xlsx, .parquet), a table of days, NEM12, NEM13, or ESPI (.xml).", Arity = ArgumentArity.ZeroOrMore };
        var zone = new Option<string?>("--zone") { Description = "Clock of bare local times, such as Europe/Dublin or UTC+10. Left out: the format's own.", HelpName = "ZONE" };
        var json = new Option<bool>("--json") { Description = "Print one JSON object for another program instead of text." };
        var verb = new Command("inspect", """
            Say what was read from records, and how far it can be trusted.

            Examples:
              SolarEconomics.Workbench inspect meter.csv --zone Europe/Dublin
              SolarEconomics.Workbench inspect january.csv february.csv --json
            """);
        verb.Arguments.Add(files);
        verb.Options.Add(zone);
        verb.Options.Add(json);
        verb.SetAction((parsed, stop) => Do(new InspectOptions(parsed.GetValue(files)!, parsed.GetValue(zone), parsed.GetValue(json)), io, stop));
        return verb;
    }

    internal static async Task<int> Do(InspectOptions options, Io io, CancellationToken stop)
    {
        if (options.Files.Count == 0)
        {
            await io.Error.WriteLineAsync("Found no file to inspect, expected one at least: inspect meter.csv --zone Europe/Dublin");
            // Who asked for JSON reads JSON also where nothing was read.
            if (!options.Json) return Exit.NotStarted;
        }
        // The answer names each file as its reader did, where that finds it.
        var paths = options.Files.Select(file => Path.GetFullPath(file) == Path.GetFullPath(file, io.Folder) ? file : Path.GetFullPath(file, io.Folder));
        var progress = new ReadingProgress(io);
        Inspection found;
        try
        {
            found = await Task.Run(() => Inspection.Of(paths, options.Zone, new ReadOptions { Cancel = stop, Progress = progress }), stop);
        }
        finally
        {
            progress.Done();
        }
        await io.Out.WriteLineAsync(options.Json ? found.ToJson() : found.ToText(CultureInfo.CurrentCulture));
        return found.ExitCode;
    }
}
