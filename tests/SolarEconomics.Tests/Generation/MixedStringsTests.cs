using System.Globalization;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>No published example was found: by hand, a naive scan and properties stand in.</summary>
public sealed class MixedStringsTests
{
    private static readonly ModuleType Old = new("old", 270) { VocV = 38.2, VmpV = 31.2, IscA = 9.2, ImpA = 8.66, LargestFuseA = 15 };
    private static readonly ModuleType New = new("new", 410) { VocV = 37.4, VmpV = 31.3, IscA = 13.9, ImpA = 13.1, LargestFuseA = 25 };

    [Fact]
    public void The_lowest_current_rules_in_series()
    {
        // By hand: 8.66 A × (6 × 31.2 + 2 × 31.3) V = 2,163 W of 2,440.
        var mixed = new ModuleString([.. Enumerable.Repeat(Old, 6), New, New]);
        Assert.Equal(8.66 * ((6 * 31.2) + (2 * 31.3)), mixed.PowerW!.Value, 1e-9);
        Assert.Equal(2440, mixed.RatedW);
        Assert.Equal(15, mixed.LargestFuseA);
    }

    [Fact]
    public void Like_strings_lose_nothing_and_push_nothing()
    {
        var alike = MixedStrings.Of(ModuleString.Of(Old, 7), ModuleString.Of(Old, 7));
        Assert.Equal(2 * 8.66 * 7 * 31.2, alike.PowerW!.Value, 0.01 * 2 * 8.66 * 7 * 31.2); // the curve's own peak lies within a per cent of the sheet's point
        Assert.Equal(0, alike.ReverseA!.Value, 1e-6);
        Assert.Equal(Verdict.WithinTheData, alike.Verdict);
    }

    [Fact]
    public void The_common_voltage_is_the_best_that_a_plain_scan_finds()
    {
        ModuleString[] strings = [ModuleString.Of(Old, 7), ModuleString.Of(New, 6)];
        var mixed = MixedStrings.Of(strings);
        var best = Enumerable.Range(0, 300_000).Max(i => i / 1000.0 * strings.Sum(s => s.CurrentA(i / 1000.0)));
        Assert.Equal(best, mixed.PowerW!.Value, 1e-3);
        Assert.True(mixed.PowerW < strings.Sum(s => MixedStrings.Of(s).PowerW!.Value)); // together never more than apart
        Assert.InRange(mixed.CommonV!.Value, 6 * 31.3, 7 * 31.2);
    }

    [Fact]
    public void The_curve_goes_through_the_sheet_s_points()
    {
        var s = ModuleString.Of(Old, 7);
        Assert.Equal(9.2, s.CurrentA(0), 1e-9);
        Assert.Equal(8.66, s.CurrentA(7 * 31.2), 0.01);
        Assert.Equal(0, s.CurrentA(7 * 38.2), 0.01);
        Assert.True(s.CurrentA(7 * 39) < 0);
    }

    [Fact]
    public void Unlike_voltages_push_current_back_and_more_of_it_the_further_apart()
    {
        double Reverse(int few) => MixedStrings.Of(ModuleString.Of(Old, 8), ModuleString.Of(Old, 8), ModuleString.Of(Old, few)).ReverseA!.Value;
        Assert.True(Reverse(5) > Reverse(7));
        Assert.True(Reverse(7) > 1e-3);
        // Three strings: a failed one is fed 1.25 × 2 × 9.2 = 23 A, above the 15 A that a module bears.
        var failed = MixedStrings.Of(ModuleString.Of(Old, 8), ModuleString.Of(Old, 8), ModuleString.Of(Old, 8)).Limits[1];
        Assert.Equal((23.0, 15.0, Verdict.CannotTell), (failed.Found!.Value, failed.Limit!.Value, failed.Verdict));
    }

    [Fact]
    public void Missing_data_never_passes_and_the_cautions_stand_on_it()
    {
        var unknown = MixedStrings.Of(ModuleString.Of(Old with { VocV = null }, 7), ModuleString.Of(New, 6));
        Assert.Equal((Verdict.CannotTell, null), (unknown.Verdict, unknown.PowerW));
        var said = unknown.Say(CultureInfo.InvariantCulture);
        Assert.Equal("cannot tell", said.Figure);
        Assert.Equal(StringCheck.Cautions, said.Cautions);
        Assert.Throws<ArgumentException>(() => MixedStrings.Of());
    }

    [Fact]
    public void A_plant_s_arrays_are_checked_where_they_hang()
    {
        var plant = new Plant([new Device("a", MeasurementPoint.InverterAcOut) { Inverter = new InverterType("i", 5000) { HighestInputV = 300, HighestShortCircuitA = 40, TrackingFromV = 90, TrackingToV = 280, HighestInputA = 30, HighestInputW = 9000 } }, new Device("b", MeasurementPoint.InverterAcOut)])
            .With(
                new Placement(new ModuleArray("x", Old with { VocPerK = -0.003, HighestSystemV = 1000 }, 7, 1, new Plane(30, 180)), "a"),
                new Placement(new ModuleArray("y", New, 6, 1, new Plane(30, 180)), "a"),
                new Placement(new ModuleArray("z", Old, 7, 1, new Plane(30, 180)), "b"));
        var checks = plant.Check(new(2025, 1, 1), new StringSite(-10, 70));
        // By hand: 7 × 38.2 × 1.105 = 295.5 V holds below 300. The new modules' highest string voltage is unknown, and so is the second device.
        Assert.Equal([Verdict.WithinTheData, Verdict.CannotTell, Verdict.CannotTell], checks.Select(c => c.Verdict));
        Assert.Equal(("a", 1), plant.SharedInputs(new(2025, 1, 1)).Select(s => (s.Device, s.Input)).Single());
    }
}
