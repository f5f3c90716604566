namespace SolarEconomics.Tests.Demo;

public class RefugeTests
{
    [Fact]
    public void What_the_refuge_used_came_from_somewhere()
    {
        // Use and the plant's own standby are all that leaves; what the converters and the battery lose lies between 5 and 25 % of what came in.
        var refuge = DemoScenario.Result.Refuge;
        var came = (refuge.ArrayWh.Sum() + refuge.GeneratorWh.Sum()) / 1000.0;
        var left = (refuge.UsedWh.Sum() / 1000.0) + (0.032 * refuge.Count / 2);
        Assert.InRange(1 - (left / came), 0.05, 0.25);
        Assert.True(refuge.DischargeWh.Sum() < refuge.ChargeWh.Sum());
        Assert.InRange(refuge.UnservedWh.Sum() / (double)refuge.UsedWh.Sum(), 0, 0.05);
    }

    [Fact]
    public void The_refuge_s_plant_and_ledger_load_as_they_are()
    {
        var plant = Plant.Load(Path.Combine(DemoScenario.Folder, "refuge-plant.json"));
        var site = Site.At("refuge", 53.2, -9.1, "Europe/Dublin", "EUR") with { Plant = plant };
        var readings = Readings.Load(Path.Combine(DemoScenario.Folder, "refuge-counters.csv"), site);
        Assert.Empty(readings.Problems);
        Assert.Equal(["array", "battery in", "battery out"], readings.Counters.Select(c => c.Device).Order(StringComparer.Ordinal));
        Assert.Equal(13, Ledger.Load(Path.Combine(DemoScenario.Folder, "refuge-ledger.csv")).Entries.Count);
    }

    [Fact]
    public void The_flows_between_the_refuge_s_counters_are_bounded()
    {
        // At the DC bus: the charger, fed by the generator, stands for the grid. Nothing counts it, so what the array sent past the battery is a range.
        var refuge = DemoScenario.Result.Refuge;
        var (array, charge, discharge) = (refuge.ArrayWh.Sum() / 1000.0, refuge.ChargeWh.Sum() / 1000.0, refuge.DischargeWh.Sum() / 1000.0);
        var bounds = new FlowWindow
        {
            Generation = EnergyRange.Exactly(array), Charge = EnergyRange.Exactly(charge), Discharge = EnergyRange.Exactly(discharge), Export = EnergyRange.Exactly(0),
            Import = new EnergyRange(0, refuge.GeneratorWh.Sum() / 1000.0),
        }.Bounds();
        var toBattery = charge - (refuge.ChargedByGeneratorWh.Sum() / 1000.0);
        Assert.True(bounds.ArrayToBattery.Contains(toBattery), $"{toBattery} outside {bounds.ArrayToBattery}");
        Assert.True(bounds.ArrayToUse.Contains(array - toBattery), $"{array - toBattery} outside {bounds.ArrayToUse}");
        Assert.Equal(0, bounds.ArrayToExport.HighKwh);
        Assert.True(bounds.ArrayToUse.WidthKwh > 0);
    }
}
