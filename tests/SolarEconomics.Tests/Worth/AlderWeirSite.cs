using AlderWeir;

namespace SolarEconomics.Tests;

/// <summary>The demo site as a notebook loads it, and the hidden truth that no record shows.</summary>
public sealed class AlderWeirSite
{
    public AlderWeirSite()
    {
        Site = SolarEconomics.Site.At("Alder Weir", latitude: 53.2, longitude: -9.1, zone: "Europe/Dublin", currency: "EUR") with
        {
            Plant = Plant.Load(Demo("plant.json")),
            TaxReclaimedShare = 0.3,
        };
        Readings = Readings.Load([Demo("meter.csv"), Demo("counters.csv")], Site);
        Tariffs = TariffHistory.Load(Demo("tariffs.json"));
        Ledger = Ledger.Load(Demo("ledger.csv"));
        Worth = SolarEconomics.Worth.ToDate(Site, Readings, Tariffs, Ledger);
        Truth = Scenario.Make(Scenario.CommittedSeed).Truth;
    }

    public Site Site { get; }

    public Readings Readings { get; }

    public TariffHistory Tariffs { get; }

    public Ledger Ledger { get; }

    public WorthToDate Worth { get; }

    public TrueFlows Truth { get; }

    /// <summary>What the plant was really worth: the bills of the hidden true flows.</summary>
    public decimal TrueValue
    {
        get
        {
            var grid = new IntervalGrid(Truth.Start, NodaTime.Duration.FromMinutes(30), Truth.Count);
            var bills = new BillDifference(Tariffs.On(grid, Site.Zone), Site.TaxReclaimedShare);
            return bills.PerPeriod(Truth.Wanted, Truth.Imported, Truth.Exported).Sum();
        }
    }

    private static string Demo(string file) => Path.Combine(DemoFolder.Find(AppContext.BaseDirectory), file);
}
