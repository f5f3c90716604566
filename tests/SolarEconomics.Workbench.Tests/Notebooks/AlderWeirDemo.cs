namespace SolarEconomics.Workbench.Tests;

/// <summary>The demo as notebook 01 loads it, from the library alone.</summary>
internal static class AlderWeirDemo
{
    private static readonly Lazy<WorthToDate> Loaded = new(Load);

    internal static WorthToDate Worth => Loaded.Value;

    /// <summary>The assumptions as notebook 01 declares them.</summary>
    internal static Assumptions NotebookAssumptions() => new()
    {
        Years = 25,
        PriceGrowth = 0.03,
        DiscountRate = 0.05,
        Ageing = Ageing.Compound(0.006),
        RunningCostsPerYear = 300,
        Replacements = [new Replacement("inverters", 14, 2600)],
    };

    private static WorthToDate Load()
    {
        var site = Site.At("Alder Weir", latitude: 53.2, longitude: -9.1, zone: "Europe/Dublin", currency: "EUR") with
        {
            Plant = Plant.Load(Demo("plant.json")),
            TaxReclaimedShare = 0.3,
        };
        var readings = Readings.Load([Demo("meter.csv"), Demo("counters.csv")], site);
        return SolarEconomics.Worth.ToDate(site, readings, TariffHistory.Load(Demo("tariffs.json")), Ledger.Load(Demo("ledger.csv")));
    }

    private static string Demo(string file) => Repository.File("data-demo", file);
}
