using BenchmarkDotNet.Attributes;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>One bill with every kind of part over a year of half hours: the limit is a millisecond.</summary>
[MemoryDiagnoser]
public class BillBenchmarks
{
    private BillingPlan _plan = null!;
    private double[] _importKwh = [];
    private double[] _exportKwh = [];

    [GlobalSetup]
    public void Lay()
    {
        var zone = MadeTable.Site.Zone;
        var start = new LocalDate(2025, 1, 1).AtStartOfDayInZone(zone).ToInstant();
        var grid = new IntervalGrid(start, Duration.FromMinutes(30), 365 * 48);
        var random = new Random(20_260_305);
        _importKwh = [.. Enumerable.Range(0, grid.Count).Select(_ => Math.Round(random.NextDouble(), 3))];
        _exportKwh = [.. Enumerable.Range(0, grid.Count).Select(_ => Math.Round(random.NextDouble(), 3))];
        var tariffs = TariffHistory.Load(Path.Combine(Places.Root, "tests", "data", "tariffs", "every-part.json"));
        _plan = tariffs.OnlyLatest().On(grid, zone, new BillingOptions { Periods = [new DateSpan(new LocalDate(2025, 1, 1), new LocalDate(2026, 1, 1))] });
    }

    [Benchmark]
    public Money EveryPart() => _plan.Bills(_importKwh, _exportKwh)[0].Total;
}
