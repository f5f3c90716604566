using NodaTime;

namespace SolarEconomics;

/// <summary>A battery's log: capacity tests, cell spread, water and cycles, from which its fade comes.</summary>
/// <param name="Notes">The lines, in any order.</param>
public sealed record BatteryLog(IReadOnlyList<BatteryNote> Notes)
{
    /// <summary>The capacity tests, earliest first.</summary>
    public IReadOnlyList<BatteryNote> Tests => [.. Notes.Where(n => n.TestedKwh is not null).OrderBy(n => n.Date)];

    /// <summary>Water filled in over the whole log. Unit: L.</summary>
    public double WaterLitres => Notes.Sum(n => n.WaterLitres);

    /// <summary>How its capacity fell, from a straight line through the tests.</summary>
    /// <exception cref="InvalidOperationException">Fewer than three tests, or all within half a year: no slope with an error can be told.</exception>
    /// <remarks>Equation: least squares of tested kWh over years, with the 95 % interval of its slope. Source: stat-1.</remarks>
    public BatteryFade Fade()
    {
        var tests = Tests;
        if (tests.Count < 3 || Period.DaysBetween(tests[0].Date, tests[^1].Date) < 182) throw Throw.TooFewTests(tests.Count);
        foreach (var test in tests)
            if (!(test.TestedKwh > 0 && test.TestedKwh < 1000)) throw Throw.NotACapacity(test.Date, test.TestedKwh!.Value);
        var years = tests.Select(t => Period.DaysBetween(tests[0].Date, t.Date) / 365.25).ToArray();
        var fit = LineFit.Of(years, [.. tests.Select(t => t.TestedKwh!.Value)]);
        var reach = StudentT.TwoSidedQuantile(0.95, fit.DegreesOfFreedom) * fit.SlopeStandardError;
        return new BatteryFade(tests[0].Date, tests.Count, fit.Intercept, -fit.Slope / fit.Intercept, (-fit.Slope - reach) / fit.Intercept, (-fit.Slope + reach) / fit.Intercept)
        {
            HighestCellSpreadMv = Notes.Max(n => n.CellSpreadMv),
            TemperaturesDiffer = tests.All(t => t.CellC is not null) ? tests.Max(t => t.CellC!.Value) - tests.Min(t => t.CellC!.Value) > 5 : null,
        };
    }
}
