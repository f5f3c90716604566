using System.CommandLine;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics.Workbench;

/// <summary>Which readings <c>bill</c> and <c>compare</c> take, as typed, with the options that say it.</summary>
internal sealed record BillSpanOptions(string Readings, string? From, string? To, string? Zone, string? Meter, string? ControlledLoad, bool Estimate, IReadOnlyList<string> Conditions)
{
    private static readonly Option<string> ReadingsOption = new("--readings")
    {
        Description = "Readings of import, and of export where there is any: NEM12, ESPI (.xml) or a table of intervals (.csv).", HelpName = "FILE", Required = true,
    };

    private static readonly Option<string?> FromOption = new("--from") { Description = "First day billed, such as 2023-03-01. Left out: the day of the first reading.", HelpName = "DATE" };
    private static readonly Option<string?> ToOption = new("--to") { Description = "First day no longer billed. Left out: the day after the last reading.", HelpName = "DATE" };

    private static readonly Option<string?> ZoneOption = new("--zone")
    {
        Description = "The home's clock, such as Europe/Dublin. Left out: that of the place the tariff names, else its clock, else the readings' own.", HelpName = "ZONE",
    };

    private static readonly Option<string?> MeterOption = new("--meter") { Description = "The meter to bill, where the readings hold several.", HelpName = "ID" };

    private static readonly Option<string?> ControlledLoadOption = new("--controlled-load")
    {
        Description = "The channel that counts the controlled load, such as E2. Left out: a second element of the meter, where the tariff prices one.", HelpName = "CHANNEL",
    };

    private static readonly Option<bool> EstimateOption = new("--estimate") { Description = "Fill missing times with the mean of the same time of day; the bill then says that it is an estimate." };

    private static readonly Option<string[]> ConditionOption = new("--condition")
    {
        Description = "A condition of the tariff that you meet, such as \"pay on time\"; once for each.", HelpName = "NAME", DefaultValueFactory = _ => [],
    };

    internal static void AddTo(Command verb)
    {
        foreach (var option in new Option[] { ReadingsOption, FromOption, ToOption, ZoneOption, MeterOption, ControlledLoadOption, EstimateOption, ConditionOption }) verb.Options.Add(option);
    }

    internal static BillSpanOptions Of(ParseResult parsed) => new(parsed.GetValue(ReadingsOption)!, parsed.GetValue(FromOption), parsed.GetValue(ToOption),
        parsed.GetValue(ZoneOption), parsed.GetValue(MeterOption), parsed.GetValue(ControlledLoadOption), parsed.GetValue(EstimateOption), parsed.GetValue(ConditionOption)!);

    internal LocalDate? FirstDay => Day("--from", From);

    internal LocalDate? EndDay => Day("--to", To);

    internal DateTimeZone? Clock => Zone is null ? null : Zones.Of(Zone);

    private static LocalDate? Day(string option, string? text)
    {
        if (text is null) return null;
        var parsed = LocalDatePattern.Iso.Parse(text);
        return parsed.Success ? parsed.Value : throw new UsageException($"{option} {text}: found no day, expected one such as 2023-03-01.");
    }
}
