using System.CommandLine;
using System.Globalization;

namespace SolarEconomics.Workbench;

/// <summary><c>compare</c>: which of several tariffs would have billed a home's own readings least.</summary>
internal static class CompareVerb
{
    public static Command Make(Io io)
    {
        var tariffs = new Option<string>("--tariffs") { Description = "A folder of tariff files and energy plans (*.json).", HelpName = "DIR", Required = true };
        var today = new Option<string?>("--today") { Description = "The name of the tariff that you have, to hear what a change saves and where it comes from.", HelpName = "NAME" };
        var json = new Option<bool>("--json") { Description = "Print one JSON list for another program instead of text." };
        var verb = new Command("compare", """
            Rank tariffs by what each would have billed for your own readings.

            Each bill is the one that "bill" prints. Ends with 1, and without totals, where the readings do not cover the days.

            Examples:
              SolarEconomics.Workbench compare --tariffs tariffs --readings meter.csv --zone Europe/Dublin
              SolarEconomics.Workbench compare --tariffs plans --readings year.nem12 --from 2023-01-01 --to 2024-01-01 --json
            """);
        verb.Options.Add(tariffs);
        BillSpanOptions.AddTo(verb);
        verb.Options.Add(today);
        verb.Options.Add(json);
        verb.SetAction((parsed, stop) => Do(new CompareOptions(parsed.GetValue(tariffs)!, BillSpanOptions.Of(parsed), parsed.GetValue(today), parsed.GetValue(json)), io, stop));
        return verb;
    }

    internal static async Task<int> Do(CompareOptions options, Io io, CancellationToken stop)
    {
        var span = options.Span;
        var (from, to, zone) = (span.FirstDay, span.EndDay, span.Clock);
        var answer = await Task.Run(() => (CompareRequest.Load(Path.GetFullPath(options.Tariffs, io.Folder), Path.GetFullPath(span.Readings, io.Folder), zone, new ReadOptions { Cancel = stop }) with
        {
            From = from, To = to, Meter = span.Meter, ControlledLoadChannel = span.ControlledLoad, EstimateWhereMissing = span.Estimate, ConditionsMet = span.Conditions, Today = options.Today,
        }).Answer(stop), stop);
        await io.Out.WriteLineAsync(options.Json ? answer.ToJson() : FindingText.Write(answer.Say(CultureInfo.CurrentCulture)));
        return answer.HasTotals ? Exit.Fine : Exit.Failed;
    }
}
