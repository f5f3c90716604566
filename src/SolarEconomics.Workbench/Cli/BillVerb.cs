using System.CommandLine;
using System.Globalization;

namespace SolarEconomics.Workbench;

/// <summary><c>bill</c>: what a tariff asks for a home's own readings, line by line.</summary>
internal static class BillVerb
{
    public static Command Make(Io io)
    {
        var tariff = new Option<string>("--tariff") { Description = "A tariff file (.json) or a regulator's energy plan (an answer of getGenericPlan).", HelpName = "FILE", Required = true };
        var periods = new Option<string?>("--periods")
        {
            Description = "One bill for each: \"month\", \"quarter\", or the first days of your own such as 2023-01-15,2023-02-14,2023-03-16, the last of which ends the last bill. Left out: one bill.",
            HelpName = "WHAT",
        };
        var json = new Option<bool>("--json") { Description = "Print one JSON object for another program instead of text." };
        var verb = new Command("bill", """
            Say what a tariff asks for your own readings, line by line.

            Rates by the hour follow the tariff's clock, billing days the meter's. Ends with 1, and without a total, where the readings do not cover the days.

            Examples:
              SolarEconomics.Workbench bill --tariff plan.json --readings meter.csv --zone Europe/Dublin
              SolarEconomics.Workbench bill --tariff plan.json --readings march.nem12 --from 2023-03-01 --to 2023-04-01 --json
              SolarEconomics.Workbench bill --tariff plan.json --readings year.csv --periods month --condition "pay on time"
            """);
        verb.Options.Add(tariff);
        BillSpanOptions.AddTo(verb);
        verb.Options.Add(periods);
        verb.Options.Add(json);
        verb.SetAction((parsed, stop) => Do(new BillOptions(parsed.GetValue(tariff)!, BillSpanOptions.Of(parsed), parsed.GetValue(periods), parsed.GetValue(json)), io, stop));
        return verb;
    }

    internal static async Task<int> Do(BillOptions options, Io io, CancellationToken stop)
    {
        var span = options.Span;
        var (from, to, periodsBy) = options.Days();
        var zone = span.Clock;
        var answer = await Task.Run(() => (BillRequest.Load(Path.GetFullPath(options.Tariff, io.Folder), Path.GetFullPath(span.Readings, io.Folder), zone, new ReadOptions { Cancel = stop }) with
        {
            From = from, To = to, Meter = span.Meter, ControlledLoadChannel = span.ControlledLoad, EstimateWhereMissing = span.Estimate,
            PeriodsBy = periodsBy, ConditionsMet = span.Conditions,
        }).Answer(), stop);
        await io.Out.WriteLineAsync(options.Json ? answer.ToJson() : FindingText.Write(answer.Say(CultureInfo.CurrentCulture)));
        return answer.HasTotal ? Exit.Fine : Exit.Failed;
    }
}
