using BenchmarkDotNet.Attributes;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>A tornado over twenty inputs of the full demo site, its flows unchanged: the limit is 200 ms.</summary>
[MemoryDiagnoser]
public class TornadoBenchmarks
{
    private static readonly string[] s_parts = ["inverter south", "inverter ground", "battery", "fans", "controller", "meter", "cables"];

    private Outlook _outlook = null!;
    private DeclaredRange[] _ranges = [];

    [GlobalSetup]
    public void Reckon()
    {
        string Demo(string file) => Path.Combine(Places.Root, "data-demo", file);
        var site = Site.At("Alder Weir", latitude: 53.2, longitude: -9.1, zone: "Europe/Dublin", currency: "EUR") with { Plant = Plant.Load(Demo("plant.json")), TaxReclaimedShare = 0.3 };
        var readings = Readings.Load([Demo("meter.csv"), Demo("counters.csv")], site);
        _outlook = Worth.ToDate(site, readings, TariffHistory.Load(Demo("tariffs.json")), Ledger.Load(Demo("ledger.csv"))).Outlook(new Assumptions
        {
            Years = 25, PriceGrowth = 0.03, DiscountRate = 0.05, Ageing = Ageing.Compound(0.006), RunningCostsPerYear = 300m,
            Replacements = [.. s_parts.Select((part, i) => new Replacement(part, 9 + i, 400 + (150 * i)))],
        });
        _ranges =
        [
            OutlookInput.PriceGrowth.Between(0, 0.05), OutlookInput.FeedInGrowth.Between(-0.02, 0.02), OutlookInput.CostGrowth.Between(0, 0.04),
            OutlookInput.YieldFactor.Between(0.92, 1.05), OutlookInput.AgeingPerYear.Between(0.003, 0.012), OutlookInput.DiscountRate.Between(0.03, 0.07),
            .. s_parts.SelectMany(part => (DeclaredRange[])[OutlookInput.ReplacementCost(part).Between(200, 2600), OutlookInput.ReplacementYear(part).Between(6, 18)]),
        ];
    }

    [Benchmark]
    public int TwentyInputs() => _outlook.Tornado(_ranges).Bars.Count;
}
