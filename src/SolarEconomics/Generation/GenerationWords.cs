using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of what a model makes of a weather record.</summary>
internal static class GenerationWords
{
    /// <summary>A loss: what rounds to nothing has no sign.</summary>
    internal const string Kwh = "#,0.0;−#,0.0;0.0";

    internal const string Percent = "0.00;−0.00;0.00";

    internal static Finding Say(GenerationResult result, CultureInfo culture)
    {
        var largest = result.Losses.MaxBy(l => l.Kwh)!;
        var grid = result.Weather.Grid;
        return new Finding(
            AtLeast(result.Weather) + string.Create(culture, $"{result.AcKwh:#,0} kWh"),
            string.Create(culture, $"from {result.Model.RatedKwp:0.00} kWp over {grid.Count * grid.StepHours / 24:#,0} days: {result.Yields.FinalHours:#,0} kWh per kWp, performance ratio {result.Yields.PerformanceRatio:0.00}, {result.PerformanceRatioAt25C:0.00} at 25 °C. The largest loss is {largest.Name}, {largest.Kwh:#,0} kWh."))
        {
            Notes =
            [
                "Weather: " + result.Weather.Origin + ".",
                string.Create(culture, $"Sky: {result.Model.Sky}; ground reflection {result.Model.GroundReflection:0.00}; the performance ratio without a sensor in the plane carries the weather's error."),
                .. InputNotes(result.Inputs, culture),
                .. result.Model.Shade is { } shade ? new[] { $"Seasonal shade as found in the record of {shade.Device}; horizons and rows of the description are put aside, as the record holds them." } : [],
            ],
            Tables =
            [
                new FindingTable("From nominal to AC", ["Step", "kWh", "% of nominal"],
                [
                    Row("nominal: rated power at the light on the planes", result.NominalKwh, 1, culture),
                    .. result.Losses.Select(l => Row(l.Name, -l.Kwh, -l.Share, culture)),
                    Row("AC", result.AcKwh, result.NominalKwh > 0 ? result.AcKwh / result.NominalKwh : 0, culture),
                ]),
                .. result.Inputs.Count == 0 ? [] : new[] { Inputs(result.Inputs, culture) },
            ],
        };
    }

    /// <summary>Before a figure that a lower bound of the weather makes a lower bound too.</summary>
    internal static string AtLeast(Weather weather) => weather.LowerBoundWhy is null ? "" : "at least ";

    internal static IEnumerable<string> InputNotes(IReadOnlyList<InputOutput> inputs, CultureInfo culture) =>
        inputs.Where(i => !i.KnowsVoltage).Select(i => string.Create(culture,
            $"Input {i.Input} ({string.Join(", ", i.Arrays)}): the modules' operating voltage is unknown, so its voltage window, its current and a common voltage cannot be told."));

    private static FindingTable Inputs(IReadOnlyList<InputOutput> inputs, CultureInfo culture) =>
        new("By input", ["Input", "Arrays", "Offered, kWh", "Taken, kWh", "Held back, kWh"], [.. inputs.Select(i => (IReadOnlyList<string>)
        [
            i.Input.ToString(culture), string.Join(", ", i.Arrays), i.OfferedKwh.ToString("#,0.0", culture), i.TakenKwh.ToString("#,0.0", culture),
            i.KnowsVoltage ? i.HeldBackKwh.ToString("#,0.0", culture) : "cannot tell",
        ])]);

    private static string[] Row(string name, double kwh, double share, CultureInfo culture) =>
        [name, kwh.ToString(Kwh, culture), (share * 100).ToString(Percent, culture)];
}
