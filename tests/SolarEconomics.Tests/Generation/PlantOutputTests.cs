using System.Globalization;
using NodaTime;
using SolarEconomics.Tests.Demo;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class PlantOutputTests
{
    private static readonly LocalDate Day = new(2025, 4, 1);
    private static readonly Site Demo = Site.At("Alder Weir", 53.2, -9.1, "Europe/Dublin", "EUR") with { Plant = Plant.Load(Path.Combine(DemoScenario.Folder, "plant.json")) };

    // Invented monthly means for the invented place.
    private static readonly Weather Year = Weather.FromMonthlyMeans(Demo, 2025, [0.6, 1.2, 2.3, 3.9, 4.9, 5.0, 4.7, 3.9, 2.8, 1.5, 0.8, 0.5], [6, 6, 7, 9, 12, 14, 16, 16, 14, 11, 8, 7], seed: 1);

    [Fact]
    public void A_plant_makes_what_its_devices_make_one_by_one()
    {
        var output = PlantOutput.Of(Demo, Day, Year);
        Assert.Equal(["south roof", "west roof", "ground array"], output.Devices.Select(d => d.Device.Name));
        // Naive: each device's model built by hand.
        var south = new GenerationModel(Demo.Plant.Find("south roof")!.Inverter!, Demo.Plant.StandingOn(Day).Single(p => p.Array.Name == "south modules").Array) { AgeFactor = Math.Pow(0.995, Period.DaysBetween(new(2022, 3, 1), Day) / 365.25) };
        Assert.Equal(south.Run(Demo, Year).AcKwh, output.Devices[0].Result.AcKwh, 1e-6);
        Assert.Equal(output.Devices.Sum(d => d.Result.AcKwh), output.AcKwh, 1e-9);
        Assert.Equal(output.AcKwh, output.ByMonth().Sum(m => m.Kwh), 1e-6);
        Assert.Equal(output.AcKwh, output.ByMonthAndHour().Cast<double>().Sum(), 1e-6);
        Assert.All(output.Devices, d => Assert.InRange(d.Result.Yields.FinalHours, 700, 1200));
        Assert.Equal([1.05, 0.648, 0.984], output.Devices.Select(d => Math.Round(d.DcAcRatio, 9)));
    }

    [Fact]
    public void History_is_the_same_object_so_any_day_can_be_asked()
    {
        Assert.Equal(["south roof"], PlantOutput.Of(Demo, new(2022, 4, 1), Year).Devices.Select(d => d.Device.Name));
        Assert.Equal(3.30, PlantOutput.Of(Demo, new(2023, 7, 1), Year).Devices.Single(d => d.Device.Name == "ground array").RatedKwp, 1e-9);
        Assert.Contains("Found no array", Assert.Throws<ArgumentException>(() => PlantOutput.Of(Demo, new(2020, 1, 1), Year)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Curtailment_is_what_stands_above_use_and_limit()
    {
        double Curtailed(double limit, double use) => PlantOutput.Of(Demo, Day, Year, new() { ExportLimitKw = limit, UseKwh = [.. Enumerable.Repeat(use, Year.Grid.Count)] }).CurtailedKwh;
        Assert.Equal(PlantOutput.Of(Demo, Day, Year).AcKwh, Curtailed(0, 0), 1e-6);
        Assert.Equal(0, Curtailed(20, 0));
        Assert.Equal(Curtailed(3, 0), Curtailed(2, 1), 1e-9); // a limit of an hour and an hour's use weigh alike
        Assert.False(PlantOutput.Of(Demo, Day, Year, new() { ExportLimitKw = 3 }).IsCurtailmentKnown);
    }

    [Fact]
    public void The_swap_is_answered_hour_by_hour_and_what_is_displaced_adds_elsewhere()
    {
        var plant = Demo.Plant;
        var large = new ModuleType("440 W module", 440) { PowerPerK = -0.0034, AreaM2 = 2.0 };
        var shed = new Face("shed", new Plane(20, 200));
        var site = Demo with { Plant = plant.With(new Device("shed", MeasurementPoint.InverterAcOut) { Inverter = new InverterType("3 kW", 3000) { Inputs = 2 } }) };
        PlantChange[] changes =
        [
            new MoveModules(Day, "south modules", "old modules", "shed", shed),
            new AddModules(new Placement(new ModuleArray("new modules", large, 12, 1, plant.Faces[0]), "south roof") { From = Day }),
        ];
        var change = EnergyOfChange.Of(site, changes, Year);
        Assert.Equal(change.After.AcKwh - change.Before.AcKwh, change.GainKwh, 1e-9);
        Assert.Equal(change.GainKwh, change.GainByMonth().Sum(m => m.Kwh), 1e-6);
        Assert.Equal(change.GainKwh, change.GainByMonthAndHour().Cast<double>().Sum(), 1e-6);
        // What the old modules make behind the shed's inverter is all that this inverter makes.
        Assert.Equal(change.After.Devices.Single(d => d.Device.Name == "shed").Result.AcKwh, change.DisplacedKwh, 1e-6);
        // 5.28 kWp on 3.6 kW clips more than 3.78 did.
        Assert.True(change.After.ClippedKwh > change.Before.ClippedKwh);
        Assert.True(change.GainKwh - change.DisplacedKwh > 0);
        var said = change.Say(CultureInfo.InvariantCulture);
        Assert.StartsWith("+", said.Figure, StringComparison.Ordinal);
        Assert.Contains(said.Tables[0].Rows, row => row.SequenceEqual(["south roof", "3.78", "5.28"]));
        Assert.Contains(said.Tables[0].Rows, row => row.SequenceEqual(["shed", "0.00", "3.78"]));
        Assert.Contains(said.Tables[1].Rows, row => row.SequenceEqual(["of it above use and the export limit", "not told", "not told", "not told"]));
        var use = new PlantOutputOptions { ExportLimitKw = 2, UseKwh = [.. Enumerable.Repeat(0.4, Year.Grid.Count)] };
        var limited = EnergyOfChange.Of(site, changes, Year, use);
        Assert.True(limited.After.CurtailedKwh > limited.Before.CurtailedKwh);
        Assert.Equal("left to use, store or export", limited.Say(CultureInfo.InvariantCulture).Tables[1].Rows[^1][0]);
        // The table by month and hour holds what the array holds.
        var hours = said.Tables.Single(t => t.Caption == "Gained by month and hour, kWh");
        Assert.Equal(12, hours.Rows.Count);
        Assert.Equal(Math.Round(change.GainByMonthAndHour()[5, 13], 1), double.Parse(hours.Rows[5][hours.Columns.ToList().IndexOf("13")].Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture), 1e-9);
        Assert.NotEmpty(said.Cautions);
        // Summer noon gains, no night hour does.
        Assert.True(change.GainByMonthAndHour()[5, 13] > 0);
        Assert.Equal(0, change.GainByMonthAndHour()[5, 1]);
    }

    [Fact]
    public void A_change_that_changes_nothing_gains_nothing()
    {
        var south = Demo.Plant.StandingOn(Day).Single(p => p.Array.Name == "south modules");
        var change = EnergyOfChange.Of(Demo, [new MoveModules(Day, "south modules", "same modules", "south roof", south.Array.Face)], Year);
        Assert.Equal(0, change.GainKwh, 1e-9);
        Assert.Equal(change.Before.Devices[0].Result.AcKwh, change.DisplacedKwh, 1e-6);
    }

    [Fact]
    public void Arrays_of_one_device_may_differ_in_shade_and_age()
    {
        var module = new ModuleType("m", 400);
        var hill = new Face("under the hill", new Plane(30, 180)) { Horizon = Horizon.Of((0, 40)) };
        var free = new Face("free", new Plane(30, 180));
        var inverter = new InverterType("i", 20_000);
        double Ac(params ModuleArray[] arrays) => new GenerationModel(inverter, arrays).Run(Demo, Year).Losses.Single(l => l.Name == "shade").Kwh;
        var shaded = new ModuleArray("a", module, 10, 1, hill);
        var open = new ModuleArray("b", module, 10, 1, free);
        Assert.Equal(Ac(shaded), Ac(shaded, open), 1e-6); // shade of one is not laid on the other
        Assert.Equal(0, Ac(open), 1e-9);
        var aged = new GenerationModel(inverter, open with { AgeFactor = 0.8 }, open).Run(Demo, Year);
        Assert.Equal(0.1, aged.Losses.Single(l => l.Name == "age").Kwh / (aged.NominalKwh - aged.Losses.TakeWhile(l => l.Name != "age").Sum(l => l.Kwh)), 1e-9);
        GenerationModelTests.AssertLanesAgree(new GenerationModel(inverter, open with { AgeFactor = 0.8 }, open), Year);
    }

    [Fact]
    public void A_controller_passes_no_more_than_its_current_at_the_battery_s_voltage()
    {
        var array = new ModuleArray("a", new ModuleType("m", 400), 3, 4, new Plane(30, 180));
        var model = new GenerationModel(new InverterType("i", 5000) { Efficiency = EfficiencyCurve.Flat(1) }, array) { Controller = new ControllerType("60 A") { HighestChargeA = 60 }, BatteryV = 48 };
        var result = model.Run(Demo, Year);
        Assert.Equal(2880, result.AcW.ToArray().Max(), 1e-9); // CV-P17: 60 A at 48 V
        Assert.Equal(result.NominalKwh - result.AcKwh, result.Losses.Sum(l => l.Kwh), 1e-9 * result.NominalKwh);
        Assert.True(result.Losses.Single(l => l.Name == "charge controller").Kwh > 0);
        Assert.Equal(3456, (model with { BatteryV = 57.6 }).Run(Demo, Year).AcW.ToArray().Max(), 1e-9);
        GenerationModelTests.AssertLanesAgree(model, Year);
    }

    [Fact]
    public void A_full_battery_holds_nothing_back_while_the_grid_takes_the_rest()
    {
        var readings = Readings.Load(Path.Combine(DemoScenario.Folder, "meter.csv"), Demo);
        var channel = readings.Of(FlowKind.Generation).Single(c => c.Device == "south roof");
        var every = SpecificYield.From(channel, Demo.Plant.Find("south roof")!, Demo);
        var limited = SpecificYield.From(channel, Demo.Plant.Find("south roof")!, Demo, readings, exportLimitKw: 5.5);
        Assert.True(limited.DaysCensored < every.DaysCensored);
        Assert.True(limited.Months.Count > every.Months.Count);
        // Hidden truth: what the array made and what was throttled of it, over three years and its 3.78 kWp. What is left is skewed to dull days, but less.
        var truth = (DemoScenario.Truth.Generation[0].Sum() + DemoScenario.Truth.Curtailed[0].Sum()) / 3 / 3.78;
        double Year(SpecificYield record) => record.Months.Average(m => m.MeanKwhPerKwp) * 12;
        Assert.InRange(Year(limited), Year(every), truth);
        Assert.True(limited.IsLowerBound);
    }

    [Fact]
    public void The_record_s_months_can_stand_in_for_weather()
    {
        var readings = Readings.Load(Path.Combine(DemoScenario.Folder, "meter.csv"), Demo);
        var channel = readings.Of(FlowKind.Generation).Single(c => c.Device == "south roof");
        var record = SpecificYield.From(channel, Demo.Plant.Find("south roof")!, Demo);
        var south = Demo.Plant.StandingOn(Day).Single(p => p.Array.Name == "south modules");
        var model = new GenerationModel(Demo.Plant.Find("south roof")!.Inverter!, south.Array) { AgeFactor = 0.9925 };
        var fitted = Year.FittedTo(Demo, record, model);
        var made = model.Run(Demo, fitted).ByMonth();
        // Summer days with a full battery are left out of the record, so it tells eight months.
        Assert.All(record.Months, m => Assert.Equal(m.MeanKwhPerKwp * 3.78, made[m.Month - 1].Kwh, 1e-6));
        // Another plane under the same sky: in those months the west roof's own record lies within a tenth.
        var west = new GenerationModel(Demo.Plant.Find("west roof")!.Inverter!, Demo.Plant.StandingOn(Day).Single(p => p.Array.Name == "west modules").Array) { AgeFactor = 0.9925 };
        var westRecord = SpecificYield.From(readings.Of(FlowKind.Generation).Single(c => c.Device == "west roof"), Demo.Plant.Find("west roof")!, Demo);
        var westMade = west.Run(Demo, fitted).ByMonth();
        var told = westRecord.Months.Where(m => record.Months.Any(r => r.Month == m.Month)).ToList();
        Assert.InRange(told.Sum(m => westMade[m.Month - 1].Kwh) / 3.24 / told.Sum(m => m.MeanKwhPerKwp), 0.9, 1.1);
        Assert.Contains("in month 1 of the record", Assert.Throws<ArgumentException>(() => Year.FittedTo(Demo, record, new GenerationModel(model.Inverter, new ModuleArray("north", south.Array.Module, 1, 1, new Plane(90, 0))))).Message, StringComparison.Ordinal);
    }
}
