using NodaTime;
using SolarEconomics.Tests.Demo;

namespace SolarEconomics.Tests.PlantRoom;

public class PlantLoadTests
{
    private static readonly Plant Demo = Plant.Load(Path.Combine(DemoScenario.Folder, "plant.json"));

    [Fact]
    public void The_demo_s_devices_are_read_field_by_field()
    {
        Assert.Equal(["south roof", "west roof first inverter", "west roof", "ground array", "battery"], Demo.Devices.Select(d => d.Name));
        var south = Demo.Find("south roof")!;
        Assert.Equal(MeasurementPoint.InverterAcOut, south.Point);
        Assert.Equal((3.78, 3.6, 4812, 8), (south.RatedKwp, south.RatedAcKw, south.OpeningKwh, south.StandbyW));
        Assert.Equal((new LocalDate(2022, 3, 1), null), (south.InService, south.OutOfService));
        Assert.Equal((1, 1), (south.ToAcLow, south.ToAcHigh));
        var ground = Demo.Find("ground array")!;
        Assert.Equal(MeasurementPoint.ControllerDcOut, ground.Point);
        Assert.Equal((0.93, 0.97), (ground.ToAcLow, ground.ToAcHigh));
        Assert.Equal([new DeviceStage(new(2022, 9, 10), 3.30), new DeviceStage(new(2023, 8, 19), 4.92)], ground.Stages);
        Assert.Equal((9.6, 17), (Demo.Find("battery")!.UsableKwh, Demo.Find("battery")!.StandbyW));
        Assert.Contains("failed", Demo.Find("west roof first inverter")!.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bracket_of_the_ground_array_holds_its_hidden_efficiency() =>
        Assert.InRange(DemoScenario.Truth.GroundDcToAc, Demo.Find("ground array")!.ToAcLow, Demo.Find("ground array")!.ToAcHigh);

    [Fact]
    public void Comments_and_a_mark_at_the_start_are_allowed()
    {
        using var file = new TextFile("\uFEFF// mine\n{ \"version\": 1, /* one */ \"devices\": [ { \"name\": \"roof\", \"point\": \"moduleDc\" }, ] }");
        Assert.Equal(new Device("roof", MeasurementPoint.ModuleDc), Plant.Load(file.Path).Devices.Single());
    }

    [Fact]
    public void Every_measurement_point_has_its_word_in_the_schema() =>
        Assert.All(Enum.GetValues<MeasurementPoint>(), point =>
        {
            var word = char.ToLowerInvariant(point.ToString()[0]) + point.ToString()[1..];
            using var file = new TextFile($$"""{ "version": 1, "devices": [ { "name": "roof", "point": "{{word}}" } ] }""");
            Assert.Equal(point, Plant.Load(file.Path).Devices.Single().Point);
        });

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_reader_s_culture_changes_nothing(string culture)
    {
        var before = System.Globalization.CultureInfo.CurrentCulture;
        System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo(culture);
        try
        {
            var plant = Plant.Load(Path.Combine(DemoScenario.Folder, "plant.json"));
            Assert.Equal(Demo.Devices.Select(d => (d.Name, d.Point, d.RatedKwp)), plant.Devices.Select(d => (d.Name, d.Point, d.RatedKwp)));
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }
}
