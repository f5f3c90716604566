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
            Wording.Kwh(output.AcKwh, culture),
            string.Create(culture, $"from {kwp:0.00} kWp over {days:#,0} days, as the plant stands on {Wording.Day(output.On, culture)}: {output.AcKwh / kwp:#,0} kWh per kWp."))
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
                    d.Result.Losses.Single(l => string.Equals(l.Name, "clipping", StringComparison.Ordinal)).Kwh.ToString("#,0.0", culture),
                    d.Result.Yields.PerformanceRatio.ToString("0.00", culture),
                ])]),
            ],
        };
    }

    internal static IReadOnlyList<string> Notes(PlantOutput output, CultureInfo culture)
    {
        var unknownAge = output.Devices.SelectMany(d => d.Placements).Where(p => p.MadeOn is null && p.TestedShare is null).Select(p => p.Array.Name).ToList();
        var rules = output.Devices.SelectMany(d => d.Placements).Select(p => $"{p.Array.Module.Name} {p.Array.Module.Ageing}").Distinct(StringComparer.Ordinal);
        return
        [
            "Weather: " + output.Weather.Origin + ".",
            "Ageing by module type, unless the caller set one rule for all: " + string.Join("; ", rules) + ".",
            .. unknownAge.Count > 0 ? new[] { $"The maker's date of {string.Join(", ", unknownAge)} is unknown: their clock starts with their first day here." } : [],
            output.IsCurtailmentKnown
                ? string.Create(culture, $"Above use and the export limit: {output.CurtailedKwh:#,0} kWh, no battery reckoned.")
                : "No use or no export limit is given, so curtailment is not told.",
            .. output.Weather.Grid.StepHours >= 1 ? new[] { "Steps of an hour hide short peaks: clipping is a lower bound." } : [],
        ];
    }
}
