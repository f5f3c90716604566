using NodaTime;
using SolarEconomics.Tests.Demo;

namespace SolarEconomics.Tests.PlantRoom;

public sealed class PlantArraysFileTests
{
    private const string File = """
        { "version": 1,
          "devices": [ { "name": "roof", "point": "inverterAcOut", "inverter": "5 kW", "inService": "2018-05-01" }, { "name": "shed", "point": "controllerDcOut", "controller": "60 A" } ],
          "moduleTypes": [
            { "name": "small", "ratedW": 270, "vocV": 38.2, "ageing": { "rule": "linear", "lossPerYear": 0.007, "firstYearLoss": 0.02 }, "warranty": { "years": 25, "lossPerYear": 0.008 } },
            { "name": "large", "ratedW": 550 } ],
          "inverterTypes": [ { "name": "5 kW", "ratedAcW": 5000, "inputs": 2, "nightW": 1, "efficiency": { "atTenth": 0.92, "atHalf": 0.96, "atFull": 0.95 } } ],
          "controllerTypes": [ { "name": "60 A", "highestChargeA": 60, "highestInputV": 150 } ],
          "faces": [
            { "name": "roof", "tiltDeg": 35, "azimuthDeg": 180, "mounting": "onRoof", "horizon": [ { "azimuthDeg": 90, "elevationDeg": 12 } ] },
            { "name": "shed", "tiltDeg": 15, "azimuthDeg": 250, "rows": { "slopeLengthM": 1, "pitchM": 3 } } ],
          "arrays": [ { "name": "old", "modules": "small", "inSeries": 7, "strings": 2, "face": "roof", "device": "roof", "from": "2018-05-01", "madeOn": "2012-06-01", "testedShare": 0.93 } ],
          "changes": [
            { "on": "2025-04-01", "change": "move", "array": "old", "name": "on the shed", "face": "shed", "device": "shed", "newInSeries": 3 },
            { "on": "2025-04-01", "change": "add", "name": "new", "modules": "large", "inSeries": 9, "face": "roof", "device": "roof", "input": 2 } ],
          "modules": [ { "id": "A1", "type": "small", "madeOn": "2012-06-01", "testedW": 250, "testedOn": "2018-05-01", "places": [ { "from": "2018-05-01", "array": "old" }, { "from": "2025-04-01" } ] } ],
          "log": [ { "on": "2024-05-03", "kind": "cleaning", "where": "roof" } ] }
        """;

    [Fact]
    public void A_plant_from_a_file_is_the_plant_from_the_same_operations()
    {
        using var file = new TextFile(File);
        var read = Plant.Load(file.Path);
        var small = new ModuleType("small", 270) { VocV = 38.2, Ageing = Ageing.Linear(0.007).WithFirstYear(0.02), Warranty = new Warranty(Ageing.Compound(0.008), 25) };
        var inverter = new InverterType("5 kW", 5000) { Inputs = 2, NightW = 1, Efficiency = EfficiencyCurve.Through(0.92, 0.96, 0.95) };
        var roof = read.Faces[0];
        var shed = new Face("shed", new Plane(15, 250)) { Rows = new Rows(new Plane(15, 250), 1, 3) };
        Assert.Equal((Mounting.OnRoof, 12, 12), (roof.Mounting, roof.Horizon.ElevationDeg(90), roof.Horizon.ElevationDeg(300)));
        var stated = new Plant(
        [
            new Device("roof", MeasurementPoint.InverterAcOut) { Inverter = inverter, InService = new(2018, 5, 1) },
            new Device("shed", MeasurementPoint.ControllerDcOut) { Controller = new ControllerType("60 A") { HighestChargeA = 60, HighestInputV = 150 } },
        ])
        .With(new Placement(new ModuleArray("old", small, 7, 2, roof), "roof") { From = new(2018, 5, 1), MadeOn = new(2012, 6, 1), TestedShare = 0.93 })
        .After(
            new MoveModules(new(2025, 4, 1), "old", "on the shed", "shed", shed) { NewInSeries = 3 },
            new AddModules(new Placement(new ModuleArray("new", new ModuleType("large", 550), 9, 1, roof), "roof") { Input = 2, From = new(2025, 4, 1) }));
        Assert.Equal(stated.Placements, read.Placements);
        Assert.Equal(stated.Changes, read.Changes);
        Assert.Equal(stated.Devices.Select(d => (d.Name, d.RatedKwp, d.RatedAcKw, d.Inverter, d.Controller)), read.Devices.Select(d => (d.Name, d.RatedKwp, d.RatedAcKw, d.Inverter, d.Controller)));
        Assert.Equal(stated.Devices.SelectMany(d => d.Stages), read.Devices.SelectMany(d => d.Stages));
    }

    [Fact]
    public void Single_modules_and_the_log_are_read()
    {
        using var file = new TextFile(File);
        var plant = Plant.Load(file.Path);
        var module = Assert.Single(plant.Modules);
        Assert.Equal(("old", null, null), (module.ArrayOn(new(2020, 1, 1)), module.ArrayOn(new(2025, 4, 1)), module.ArrayOn(new(2010, 1, 1))));
        Assert.Equal(250 / 270.0, module.ShareLeft(new(2018, 5, 1))!.Value, 1e-12);
        Assert.Null((module with { MadeOn = null, TestedW = null }).ShareLeft(new(2020, 1, 1)));
        Assert.Equal((LogKind.Cleaning, "roof"), (plant.Log[0].Kind, plant.Log[0].Where));
    }

    [Fact]
    public void The_demo_s_history_gives_the_ratings_that_its_devices_state()
    {
        var plant = Plant.Load(Path.Combine(DemoScenario.Folder, "plant.json"));
        Assert.Equal([("south roof", 3.78), ("west roof", 3.24), ("ground frame", 4.92)],
            plant.KwpByFaceOn(new(2024, 1, 1)).Select(f => (f.Face, Math.Round(f.Kwp, 9))).OrderBy(f => f.Face == "ground frame").ThenBy(f => f.Face));
        Assert.Equal((8.64, 11.94), (plant.RatedKwpOn(new(2022, 5, 1)), Math.Round(plant.RatedKwpOn(new(2023, 7, 1)), 9)));
    }

    [Theory]
    [InlineData("\"modules\": \"small\", \"inSeries\": 7, \"strings\": 2", "\"modules\": \"smal\", \"inSeries\": 7, \"strings\": 2",
        "line 11, column 32: found \"smal\", expected the name of a module type of this file, such as small, large.")]
    [InlineData("\"tiltDeg\": 35", "\"tiltDeg\": -35", "found -35, expected degrees from level, 0 to 90; an array that leans the other way has its azimuth turned by 180.")]
    [InlineData("\"inSeries\": 7", "\"inSeries\": 0", "found 0, expected modules in series in one string, 1 to 100.")]
    [InlineData("\"vocV\": 38.2,", "\"vocV\": 38.2, \"vmpV\": 45,", "found Vmp 45 V at or above Voc 38.2 V for small, expected vmpV 15 to 25 % below vocV. Are the two swapped?")]
    [InlineData("\"vocV\": 38.2,", "\"vocPerK\": -0.3,", "found -0.3, expected change per °C as a fraction from -0.01 to 0; -0.30 %/°C is -0.0030")]
    [InlineData("\"vocV\": 38.2,", "\"powerPerK\": 0.004,", "power and voltage fall with heat, so the sign is minus.")]
    [InlineData("\"array\": \"old\", \"name\": \"on", "\"array\": \"olde\", \"name\": \"on", "found \"olde\", which does not stand on 2025-04-01, expected an array that stands on that day, such as old.")]
    [InlineData("\"newInSeries\": 3", "\"newInSeries\": 5", "found 5 in series: 191 V open at 25 °C for on the shed, expected below the 150 V that destroys shed")]
    [InlineData("\"change\": \"move\", \"array\": \"old\",", "\"change\": \"move\",", "found no field \"array\"")]
    [InlineData("\"atTenth\": 0.92, \"atHalf\": 0.96", "\"atTenth\": 0.97, \"atHalf\": 0.91", "found what cannot be (Found efficiencies 0.97, 0.91 and 0.95")]
    [InlineData("\"point\": \"inverterAcOut\", ", "\"point\": \"inverterAcOut\", \"ratedKwp\": 3.0, ", "found 3 kWp beside arrays of 4.95 kWp, expected one figure")]
    public void A_mistake_is_found_where_it_stands(string good, string bad, string words)
    {
        Assert.Contains(good, File, StringComparison.Ordinal);
        using var file = new TextFile(File.Replace(good, bad, StringComparison.Ordinal));
        Assert.Contains(words, Assert.Throws<RecordException>(() => Plant.Load(file.Path)).Message, StringComparison.Ordinal);
    }
}
