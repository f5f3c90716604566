using BenchmarkDotNet.Attributes;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>Time and memory of a five-minute year of the full plant: AC and DC arrays, battery with taper, generator, waiting loads, an outage.</summary>
[MemoryDiagnoser]
public class DispatchBenchmarks
{
    private readonly EnergySystem _system = new()
    {
        Battery = Battery.Of(10, 0.92, 4) with { Taper = new ChargeTaper(0.85, 0.1), SelfDischargePerMonth = 0.02, StandbyW = 15 },
        Converter = new Converter { ToAc = 0.95, ToDc = 0.95, MostToAcKw = 5, MostToDcKw = 5, StandbyW = 20 },
        Grid = new GridConnection { MostImportKw = 14, MostExportKw = 5, RunsInOutages = true },
        Generator = new Generator(4, new FuelLine(0.09, 0.25)) { QuietHours = [HourSpan.Parse("22:00-07:00")] },
    };

    private Conditions? _conditions;

    [GlobalSetup]
    public void Make()
    {
        var time = Timeline.Year(2025, Duration.FromMinutes(5), MadeTable.Site.Zone);
        double[] Sun(double kw) => [.. Enumerable.Range(0, time.Count).Select(i => Math.Max(0, kw / 12 * Math.Sin(((i / 12.0 % 24) - 6) * Math.PI / 12)))];
        _conditions = new Conditions(LoadSeries.OfMonths(time, [.. Enumerable.Repeat(350.0, 12)], LoadProfile.Household))
        {
            Arrays = [ArraySupply.Ac("roof", Sun(4)), new ArraySupply("ground", Coupling.Dc, Sun(3)) { Efficiency = 0.97 }],
            Deferrable = [new DeferrableLoad("water", 4, 2, HourSpan.Parse("09:00-17:00"))],
            GridIsOut = Enumerable.Range(0, time.Count).Select(i => i is > 5000 and < 5200).ToArray(),
        };
    }

    [Benchmark]
    public double Year() => _system.Run(_conditions!, new GeneratorStart()).StoredKwh[^1];
}
