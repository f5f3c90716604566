using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.PlantRoom;

/// <summary>Modules known one by one age their array: checked by hand and against a naive loop over strings; no published example was found.</summary>
public sealed class SingleModulesTests
{
    private static readonly LocalDate Day = new(2025, 6, 1);
    private static readonly ModuleType Type = new("270", 270) { VocV = 38.2, VmpV = 31.2, IscA = 9.2, ImpA = 8.66, Ageing = Ageing.Linear(0.01) };
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");

    private static Plant Made(int inSeries, int strings, params IndividualModule[] modules) =>
        new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { Inverter = new InverterType("i", 5000) }, new Device("shed", MeasurementPoint.InverterAcOut) { Inverter = new InverterType("i", 5000) }])
            .With(new Placement(new ModuleArray("a", Type, inSeries, strings, new Plane(35, 180)), "roof") { From = new(2020, 6, 1), MadeOn = new(2020, 6, 1) })
            with { Modules = modules };

    private static IndividualModule Tested(string id, double share, int? @string = null, ModuleType? type = null) =>
        new(id, type ?? Type) { TestedW = share * (type ?? Type).RatedW, TestedOn = Day, Places = [new ModulePlace(new(2020, 6, 1), "a") { String = @string }] };

    [Fact]
    public void The_weakest_of_a_string_rules_it_and_strings_add()
    {
        // By hand: string 1 min(0.90, 0.95, 0.80) = 0.80; string 2 min(0.97, rest) with the rest five years old at 1 % a year.
        var plant = Made(3, 2, Tested("p", 0.90, 1), Tested("q", 0.95, 1), Tested("r", 0.80, 1), Tested("s", 0.97, 2));
        var left = plant.ShareLeft(plant.Placements[0], Day);
        var rest = 1 - (0.01 * Period.DaysBetween(new(2020, 6, 1), Day) / 365.25);
        Assert.Equal([0.80, rest], left.Strings.Select(s => Math.Round(s, 12)), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal((0.80 + rest) / 2, left.Share, 1e-12);
        Assert.Equal(4, left.Known);
    }

    [Fact]
    public void An_output_uses_their_share_and_says_so()
    {
        var weather = GenerationRoom.GenerationModelTests.MadeUp(new IntervalGrid(Instant.FromUtc(2025, 6, 1, 0, 0), Duration.FromHours(1), 240), seed: 1, split: true);
        PlantOutput Of(Plant plant) => PlantOutput.Of(Place with { Plant = plant }, Day, weather);
        var known = Of(Made(2, 1, Tested("p", 0.60), Tested("q", 0.9)));
        var aged = known.Devices[0].Result.Model.Arrays[0].AgeFactor;
        Assert.Equal(0.60, aged, 1e-12);
        Assert.True(known.AcKwh < Of(Made(2, 1)).AcKwh);
        Assert.Contains(known.Say(CultureInfo.InvariantCulture).Notes, n => n == "a: 2 of 2 modules are known one by one; the weakest of each string rules it, 60.0 % of the rating is left.");
    }

    [Fact]
    public void A_second_hand_module_brings_its_past()
    {
        // By hand: made in June 2010, tested at 0.85 in June 2020, 1 % of the initial power a year: 0.85 · (1 − 0.15) / (1 − 0.10).
        var old = new IndividualModule("old", Type) { MadeOn = new(2010, 6, 1), TestedW = 0.85 * 270, TestedOn = new(2020, 6, 1), Places = [new ModulePlace(new(2020, 6, 1), "a")] };
        Assert.Equal(0.85 * 0.85 / 0.90, Made(2, 1, old).ShareLeft(Made(2, 1, old).Placements[0], Day).Share, 1e-4);
        // With a rule of the caller the same rule holds for all.
        Assert.Equal(0.85, Made(2, 1, old).ShareLeft(Made(2, 1, old).Placements[0], Day, Ageing.None).Share, 1e-12);
    }

    [Fact]
    public void Another_type_in_a_string_counts_by_its_current_and_voltage()
    {
        // By hand: the other type has the lowest current, 8.0 A: (2 × 31.2 + 30) V · 8.0 A of 3 × 31.2 V · 8.66 A.
        var other = new ModuleType("other", 320) { VocV = 36, VmpV = 30, IscA = 8.5, ImpA = 8.0 };
        var plant = Made(3, 1, Tested("x", 1, type: other), Tested("y", 1), Tested("z", 1));
        Assert.Equal(8.0 * 92.4 / (3 * 31.2 * 8.66), plant.ShareLeft(plant.Placements[0], Day).Share, 1e-12);
    }

    [Fact]
    public void A_naive_walk_over_strings_finds_the_same() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 4]).SelectMany((n, s) => Gen.Double[0.3, 1].Array[n * s].Select(shares => (n, s, shares))).Sample(x =>
        {
            var plant = Made(x.n, x.s, [.. x.shares.Select((share, i) => Tested($"{i}", share, 1 + (i % x.s)))]);
            var sum = 0.0;
            for (var s = 0; s < x.s; s++)
            {
                var weakest = double.MaxValue;
                for (var i = s; i < x.shares.Length; i += x.s) weakest = Math.Min(weakest, x.shares[i]);
                sum += weakest;
            }
            Assert.Equal(sum / x.s, plant.ShareLeft(plant.Placements[0], Day).Share, 1e-12);
        }, iter: 100);

    [Fact]
    public void Modules_go_where_their_strings_go()
    {
        var plant = Made(2, 2, Tested("p", 0.9, 1), Tested("q", 0.9, 1), Tested("r", 0.7, 2), Tested("s", 0.8, 2));
        var shed = new Face("shed", new Plane(10, 180));
        var moved = plant.After(new MoveModules(Day, "a", "b", "shed", shed) { Strings = 1 });
        Assert.Equal(["a", "a", "b", "b"], moved.Modules.Select(m => m.ArrayOn(Day)));
        Assert.Equal(["a", "a", "a", "a"], moved.Modules.Select(m => m.ArrayOn(Day.PlusDays(-1))));
        Assert.Equal([0.9, 0.7], moved.StandingOn(Day).Select(p => Math.Round(moved.ShareLeft(p, Day).Share, 12)));
        var gone = moved.After(new RetireModules(Day.PlusDays(9), "b"));
        Assert.Equal(["a", "a", null, null], gone.Modules.Select(m => m.ArrayOn(Day.PlusDays(9))));
        Assert.All(plant.After(new ReplaceModules(Day, "a", "new", Type, 2, 2)).Modules, m => Assert.Null(m.ArrayOn(Day)));
    }

    [Fact]
    public void Too_many_modules_are_refused_in_words()
    {
        var plant = Made(2, 1, Tested("p", 0.9), Tested("q", 0.9), Tested("r", 0.9));
        Assert.Equal("Found no seat for module \"r\" in a, in which 3 modules are said to be, expected at most 2 in each of its 1 strings.",
            Assert.Throws<ArgumentException>(() => plant.ShareLeft(plant.Placements[0], Day)).Message);
    }

    private const string File = """
        { "version": 1,
          "devices": [ { "name": "roof", "point": "inverterAcOut", "inverter": "5 kW" } ],
          "moduleTypes": [ { "name": "small", "ratedW": 270 } ],
          "inverterTypes": [ { "name": "5 kW", "ratedAcW": 5000, "eachInput": [ { "trackingFromV": 100, "highestInputA": 12 }, { "trackingFromV": 60, "trackingToV": 400 } ] } ],
          "faces": [ { "name": "roof", "tiltDeg": 35, "azimuthDeg": 180 } ],
          "arrays": [ { "name": "a", "modules": "small", "inSeries": 2, "face": "roof", "device": "roof", "cable": { "lengthM": 20, "squareMm": 6 }, "input": 2, "from": "2020-06-01" } ],
          "modules": [
            { "id": "A1", "type": "small", "madeOn": "2012-06-01", "testedW": 250, "testedOn": "2018-05-01", "places": [ { "from": "2020-06-01", "array": "a", "string": 1 } ] },
            { "id": "A2", "type": "small", "madeOn": "2012-06-01", "places": [ { "from": "2020-06-01", "array": "a" } ] } ] }
        """;

    [Fact]
    public void They_and_the_limits_of_each_input_are_read_from_a_file()
    {
        using var file = new TextFile(File);
        var plant = Plant.Load(file.Path);
        Assert.Equal(2, plant.ShareLeft(plant.Placements[0], Day).Known);
        Assert.Equal(new Cable(20, 6), plant.Placements[0].Array.Cable);
        var inverter = plant.Find("roof")!.Inverter!;
        Assert.Equal((2, 12.0, null, 60.0), (inverter.Inputs, inverter.LimitsOf(1).HighestInputA, inverter.LimitsOf(2).HighestInputA, inverter.LimitsOf(2).TrackingFromV));
    }

    [Theory]
    [InlineData("\"testedW\": 250", "\"testedW\": 350", "found 350 W for A1, rated 270 W, expected at most 110 % of the rating")]
    [InlineData("\"testedOn\": \"2018-05-01\"", "\"testedOn\": \"2011-05-01\"", "found 2011-05-01, before madeOn 2012-06-01")]
    [InlineData("\"array\": \"a\", \"string\": 1", "\"array\": \"b\", \"string\": 1", "found A1 in \"b\" from 2020-06-01, expected the name of an array, such as a.")]
    [InlineData("\"string\": 1", "\"string\": 2", "found 1 modules in string 2 of a on 2020-06-01, expected at most 2 in each of its 1 strings.")]
    [InlineData("\"inSeries\": 2", "\"inSeries\": 1", "found 2 modules in a on 2020-06-01, which has 1")]
    [InlineData("\"id\": \"A2\"", "\"id\": \"A1\"", "found \"A1\" 2 times, expected a mark of its own for each module.")]
    [InlineData("\"ratedAcW\": 5000,", "\"ratedAcW\": 5000, \"inputs\": 3,", "found 3 inputs beside 2 in eachInput, expected the same number, or inputs left out.")]
    [InlineData("\"trackingToV\": 400", "\"trackingToV\": 50", "found 60 V, not below trackingToV 50 V")]
    [InlineData("\"squareMm\": 6", "\"squareMm\": 0.06", "found 0.06, expected section of a conductor in mm², 0.5 to 500.")]
    [InlineData("\"input\": 2", "\"input\": 3", "found input 3 for a, expected 1 to 2, the inputs of roof.")]
    [InlineData("\"highestInputA\": 12", "\"highestInputA\": -12", "found -12, expected highest operating current of the input in A")]
    public void A_mistake_of_a_module_or_an_input_is_named_where_it_stands(string good, string bad, string words)
    {
        Assert.Contains(good, File, StringComparison.Ordinal);
        using var file = new TextFile(File.Replace(good, bad, StringComparison.Ordinal));
        var message = Assert.Throws<RecordException>(() => Plant.Load(file.Path)).Message;
        Assert.True(message.Contains(words, StringComparison.Ordinal), message);
    }
}
