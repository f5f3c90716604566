using NodaTime;

namespace SolarEconomics.Tests.PlantRoom;

public sealed class PlantChangeTests
{
    private static readonly LocalDate Start = new(2018, 5, 1);
    private static readonly LocalDate Day = new(2025, 4, 1);
    private static readonly ModuleType Small = new("small", 270) { VocV = 38.2, IscA = 9.2, AreaM2 = 1.64 };
    private static readonly ModuleType Large = new("large", 550) { VocV = 49.8, IscA = 14, AreaM2 = 2.58 };
    private static readonly Face Roof = new("roof", new Plane(35, 180)) { RoomM2 = 24 };
    private static readonly Face Shed = new("shed", new Plane(15, 250));

    private static Plant Before() => new Plant(
    [
        new Device("roof inverter", MeasurementPoint.InverterAcOut) { InService = Start, Inverter = new InverterType("5 kW", 5000) { HighestInputV = 600, HighestShortCircuitA = 40 } },
        new Device("shed inverter", MeasurementPoint.InverterAcOut) { InService = Start, Inverter = new InverterType("3 kW", 3000) { HighestInputV = 500, Inputs = 2 } },
    ]).With(new Placement(new ModuleArray("old", Small, 7, 2, Roof), "roof inverter") { From = Start });

    private static Plant Upgraded() => Before().After(
        new MoveModules(Day, "old", "old on the shed", "shed inverter", Shed),
        new AddModules(new Placement(new ModuleArray("new", Large, 9, 1, Roof), "roof inverter") { From = Day }));

    [Fact]
    public void An_upgrade_is_two_changes_and_history_stays()
    {
        var plant = Upgraded();
        Assert.Equal([("roof", 3.78)], plant.KwpByFaceOn(Day.PlusDays(-1)));
        Assert.Equal([("shed", 3.78), ("roof", 4.95)], plant.KwpByFaceOn(Day).Select(f => (f.Face, Math.Round(f.Kwp, 9))));
        var roof = plant.Find("roof inverter")!;
        Assert.Equal((3.78, 4.95), (roof.RatedKwpOn(Day.PlusDays(-1)), roof.RatedKwpOn(Day)));
        Assert.Equal(0.99, roof.DcAcRatio!.Value, 1e-12); // by hand: 9 × 0.55 / 5
        Assert.Equal((0, 3.78), (plant.Find("shed inverter")!.RatedKwpOn(Day.PlusDays(-1)), plant.Find("shed inverter")!.RatedKwpOn(Day)));
        Assert.Equal(["old moved to shed behind shed inverter as old on the shed", "9 × large added as new"], plant.Changes.Select(c => c.Words));
        Assert.Equal([("roof", 3.78)], Before().KwpByFaceOn(Day)); // the plant before is untouched
    }

    [Fact]
    public void Moved_modules_keep_their_age()
    {
        var moved = Upgraded().StandingOn(Day).Single(p => p.Array.Name == "old on the shed");
        Assert.Equal("old", moved.CameFrom);
        Assert.Equal(Period.DaysBetween(Start, Day) / 365.25, moved.AgeYears(Day), 1e-12);
        Assert.Equal(Math.Pow(0.995, moved.AgeYears(Day)), moved.ShareLeft(Day), 1e-12);
    }

    [Fact]
    public void Some_strings_can_move_and_the_rest_stays_under_its_name()
    {
        var plant = Before().After(new MoveModules(Day, "old", "one string", "shed inverter", Shed) { Strings = 1, Input = 2 });
        Assert.Equal([("old", 7, 1), ("one string", 7, 1)], plant.StandingOn(Day).Select(p => (p.Array.Name, p.Array.InSeries, p.Array.Strings)));
        Assert.Equal(1.89, plant.Find("roof inverter")!.RatedKwpOn(Day), 1e-12);
        Assert.Equal(3.78, plant.RatedKwpOn(Day), 1e-12);
    }

    [Fact]
    public void One_day_may_send_an_array_s_strings_to_two_places()
    {
        var plant = Before().After(
            new MoveModules(Day, "old", "first", "shed inverter", Shed) { Strings = 1 },
            new MoveModules(Day, "old", "second", "shed inverter", Shed) { Input = 2 });
        Assert.Equal(["first", "second"], plant.StandingOn(Day).Select(p => p.Array.Name));
        Assert.All(plant.StandingOn(Day), p => Assert.Equal(Start, p.MadeOn));
        Assert.Equal((3.78, 0), (plant.Find("roof inverter")!.RatedKwpOn(Day.PlusDays(-1)), plant.Find("roof inverter")!.RatedKwpOn(Day)));
    }

    [Fact]
    public void Modules_that_fill_no_string_are_left_over()
    {
        var plant = Before().After(new MoveModules(Day, "old", "rewired", "shed inverter", Shed) { NewInSeries = 5 });
        Assert.Equal((5, 2, 10), plant.StandingOn(Day).Select(p => (p.Array.InSeries, p.Array.Strings, p.Array.Count)).Single());
    }

    [Fact]
    public void Replacing_keeps_face_and_device_and_retiring_takes_the_device_out_of_service()
    {
        var replaced = Before().After(new ReplaceModules(Day, "old", "new", Large, 9, 1));
        var now = replaced.StandingOn(Day).Single();
        Assert.Equal(("new", Roof, "roof inverter"), (now.Array.Name, now.Array.Face, now.Device));
        var gone = Before().After(new RetireModules(Day, "old") { Fate = "sold" });
        Assert.Equal((3.78, Day), (gone.Find("roof inverter")!.RatedKwp, gone.Find("roof inverter")!.OutOfService));
        Assert.Equal((3.78, 0), (gone.RatedKwpOn(Day.PlusDays(-1)), gone.RatedKwpOn(Day)));
        Assert.Equal("old retired (sold)", gone.Changes.Single().Words);
    }

    [Fact]
    public void An_array_that_does_not_stand_there_is_named_with_the_nearest() =>
        Says(() => Before().After(new RetireModules(Day, "olt")), "/array: found \"olt\", which does not stand on 2025-04-01, expected an array that stands on that day, such as old.");

    [Fact]
    public void More_strings_than_there_are_cannot_move() =>
        Says(() => Before().After(new MoveModules(Day, "old", "x", "shed inverter", Shed) { Strings = 3 }), "/strings: found 3 strings of old, expected 1 to the 2 that stand there.");

    [Fact]
    public void An_impossible_plant_is_named_field_by_field()
    {
        Says(() => Place(Small with { VmpV = 39 }), "/arrays/1/modules: found Vmp 39 V at or above Voc 38.2 V for small, expected vmpV 15 to 25 % below vocV. Are the two swapped?");
        Says(() => Place(Small, device: "roof invertr"), "/arrays/1/device: found \"roof invertr\" for x, expected the name of a device, such as roof inverter, shed inverter.");
        Says(() => Place(Small, device: "shed inverter", input: 3), "/arrays/1/input: found input 3 for x, expected 1 to 2, the inputs of shed inverter.");
        Says(() => Place(Small, device: "shed inverter", inSeries: 14), "/arrays/1/inSeries: found 14 in series: 534.8 V open at 25 °C for x, expected below the 500 V that destroys shed inverter");
        Says(() => Place(Small, name: "old"), "/arrays/1/name: found \"old\" a second time in the same days");
        Says(() => Place(Large, inSeries: 2, strings: 2, face: Shed), "/arrays/1/input: found 46.4 A of short circuit on input 1 of roof inverter: x beside old, expected at most the 40 A of that input; put one of them on another input.");
        Says(() => Place(Small, until: Start), "/arrays/1/until: found 2018-05-01, not after from 2018-05-01");
        Says(() => Place(Small, made: Day), "/arrays/1/madeOn: found 2025-04-01, after from 2018-05-01");
        Says(() => Place(Small, inSeries: 10, strings: 2, face: Roof, device: "shed inverter"), "/arrays/1/face: found 32.8 m² of modules of x on roof, expected at most the 24 m² of that face");
        Assert.Throws<ArgumentOutOfRangeException>(() => new Plane(-5, 180));
        Assert.Throws<ArgumentOutOfRangeException>(() => Place(Small, inSeries: 0));
        Assert.Contains("the sign is minus", Assert.Throws<ArgumentOutOfRangeException>(() => new ModuleType("x", 270) { VocPerK = 0.003 }).Message, StringComparison.Ordinal);
        Assert.Contains("−0.30 %/°C is written −0.0030", Assert.Throws<ArgumentOutOfRangeException>(() => new ModuleType("x", 270) { VocPerK = -0.3 }).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_of_second_hand_modules_sets_their_share_and_age_goes_on_from_there()
    {
        var tested = new Placement(new ModuleArray("x", Small, 7, 1, Shed), "shed inverter") { MadeOn = new(2012, 4, 1), From = Day, TestedShare = 0.9 };
        Assert.Equal(0.9, tested.ShareLeft(Day), 1e-12);
        Assert.Equal(0.9 * Math.Pow(0.995, 2), tested.ShareLeft(Day.PlusYears(2)), 1e-5);
    }

    private static Plant Place(ModuleType module, string name = "x", string device = "roof inverter", int inSeries = 7, int strings = 1, int input = 1,
        Face? face = null, LocalDate? until = null, LocalDate? made = null) =>
        Before().With(new Placement(new ModuleArray(name, module, inSeries, strings, face ?? Shed), device) { From = Start, Until = until, MadeOn = made, Input = input });

    private static void Says(Action act, string words) => Assert.Contains(words, Assert.Throws<ArgumentException>(act).Message, StringComparison.Ordinal);
}
