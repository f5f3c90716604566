using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of a plant's output.</summary>
internal static class PlantOutputWords
{
    internal static Finding Say(PlantOutput output, CultureInfo culture)
    {
        var kwp = output.Devices.Sum(d => d.RatedKwp);
        var days = output.Weather.Grid.Count * output.Weather.Grid.StepHours / 24;
        return new Finding(
            GenerationWords.AtLeast(output.Weather) + Wording.Kwh(output.AcKwh, culture),
            string.Create(culture, $"from {kwp:0.00} kWp over {days:#,0} days, as the plant stands on {Wording.Day(output.On, culture)}: {output.AcKwh / kwp:#,0} kWh per kWp.") + Why(output.Weather))
        {
            Notes = Notes(output, culture),
            Cautions = [Cautions.Panels],
            Tables =
            [
                new FindingTable("By inverter", ["Device", "kWp", "kWp per kW", "kWh", "Clipped, kWh", "Performance ratio"], [.. output.Devices.Select(d => (IReadOnlyList<string>)
                [
                    d.Device.Name,
                    d.RatedKwp.ToString("0.00", culture),
                    d.DcAcRatio.ToString("0.00", culture),
                    d.Result.AcKwh.ToString("#,0", culture),
                    d.Result.ClippedKwh.ToString("#,0.0", culture),
                    d.Result.Yields.PerformanceRatio.ToString("0.00", culture),
                ])]),
                new FindingTable("From nominal to AC, all devices", ["Loss", "kWh", "% of nominal"], [.. output.Losses.Select(l => (IReadOnlyList<string>)
                    [l.Name, (-l.Kwh).ToString(GenerationWords.Kwh, culture), (-l.Share * 100).ToString(GenerationWords.Percent, culture)])]),
            ],
        };
    }

    /// <summary>The reason of an "at least", as a sentence of its own.</summary>
    internal static string Why(Weather weather) => weather.LowerBoundWhy is { } why ? $" At least, because {why}." : "";

    internal static IReadOnlyList<string> Notes(PlantOutput output, CultureInfo culture)
    {
        var placements = output.Devices.SelectMany(d => d.Placements).Select(p => (Placement: p, Left: output.Site.Plant.ShareLeft(p, output.On, output.AgeingForAll))).ToList();
        var unknownAge = placements.Where(p => p.Placement is { MadeOn: null, TestedShare: null } && p.Left.Known < p.Placement.Array.Count).Select(p => p.Placement.Array.Name).ToList();
        var knownModules = placements.Where(p => p.Left.Known > 0).Select(p => string.Create(culture,
            $"{p.Placement.Array.Name}: {p.Left.Known} of {p.Placement.Array.Count} modules are known one by one; the weakest of each string rules it, {string.Join(" and ", p.Left.Strings.Select(s => Wording.Percent(s, culture)))} of the rating is left."));
        var rules = output.Devices.SelectMany(d => d.Placements).Select(p => $"{p.Array.Module.Name} {p.Array.Module.Ageing}").Distinct(StringComparer.Ordinal);
        return
        [
            "Weather: " + output.Weather.Origin + ".",
            output.AgeingForAll is { } rule ? $"Ageing of all modules by one rule: {rule}." : "Ageing by module type: " + string.Join("; ", rules) + ".",
            .. knownModules,
            .. output.Devices.SelectMany(d => GenerationWords.InputNotes(d.Result.Inputs, culture).Select(note => $"{d.Device.Name}: {note}")),
            .. output.Devices.Any(d => d.Result.Model.Shade is not null) ? new[] { $"Seasonal shade as found in the record of {string.Join(", ", output.Devices.Where(d => d.Result.Model.Shade is not null).Select(d => d.Device.Name))}; horizons and rows of the description are put aside there, as the record holds them." } : [],
            .. unknownAge.Count > 0 ? new[] { $"The maker's date of {string.Join(", ", unknownAge)} is unknown: their clock starts with their first day here." } : [],
            output.IsCurtailmentKnown
                ? string.Create(culture, $"Above use and the export limit: {output.CurtailedKwh:#,0} kWh, no battery reckoned.")
                : "No use or no export limit is given, so curtailment is not told.",
            .. output.Weather.Grid.StepHours >= 1 ? new[] { "Steps of an hour hide short peaks: clipping is a lower bound." } : [],
        ];
    }
}
