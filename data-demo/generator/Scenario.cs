namespace AlderWeir;

/// <summary>The invented site Alder Weir: its record files, and what really happened there.</summary>
public static class Scenario
{
    /// <summary>The seed of the files that are committed in <c>data-demo/</c>.</summary>
    public const ulong CommittedSeed = 1;

    /// <summary>Makes the scenario. The same seed gives the same bytes on every machine.</summary>
    /// <param name="seed">Chooses the weather and the habits; dates, devices, receipts and prices stay.</param>
    public static ScenarioResult Make(ulong seed)
    {
        var clock = new Clock();
        var draw = new Draw(seed);
        var truth = Board.Run(clock, draw);
        var refuge = RefugeSite.Run(clock, draw);
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
        {
            ["README.md"] = Text.Bytes(ReadmeFile.Write()),
            ["counters.csv"] = Text.Bytes(CounterFile.Write(clock, draw, truth)),
            ["ledger.csv"] = Text.Bytes(LedgerFile.Write()),
            ["meter.csv"] = Text.Bytes(MeterFile.Write(clock, truth)),
            ["plant.json"] = Text.Bytes(PlantFile.Write()),
            ["refuge-battery.csv"] = Text.Bytes(RefugeBatteryFile.Write(clock, draw, refuge)),
            ["refuge-counters.csv"] = Text.Bytes(RefugeCounterFile.Write(clock, refuge)),
            ["refuge-generator.csv"] = Text.Bytes(RefugeGeneratorFile.Write(clock, refuge)),
            ["refuge-ledger.csv"] = Text.Bytes(RefugeLedgerFile.Write()),
            ["refuge-plant.json"] = Text.Bytes(RefugePlantFile.Write()),
            ["tariffs.json"] = Text.Bytes(TariffFile.Write()),
        };
        return new ScenarioResult(files, truth, refuge);
    }
}
