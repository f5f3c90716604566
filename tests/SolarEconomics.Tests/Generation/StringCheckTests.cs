using System.Globalization;
using CsCheck;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class StringCheckTests
{
    private static readonly ModuleType Full = new("270", 270)
    {
        VocV = 38.5, VmpV = 31.2, IscA = 9.2, ImpA = 8.7, VocPerK = -0.0031, VmpPerK = -0.0042, PowerPerK = -0.0041, HighestSystemV = 1000, LargestFuseA = 15,
    };

    private static readonly InverterType Inverter = new("5 kW", 5000)
    {
        HighestInputV = 600, TrackingFromV = 200, TrackingToV = 500, HighestInputA = 11, HighestShortCircuitA = 15, HighestInputW = 6500,
    };

    private static readonly StringSite Place = new(-12, 65);

    [Fact]
    public void With_all_data_a_fitting_string_is_within_the_data_given_and_never_called_safe()
    {
        var check = StringCheck.On(new ModuleArray("south", Full, 12, 1, Plane.Level), Inverter, Place);
        Assert.Equal(Verdict.WithinTheData, check.Verdict);
        var said = check.Say(CultureInfo.InvariantCulture);
        Assert.Equal("within the data given", said.Figure);
        Assert.DoesNotContain("safe", said.Words + string.Join(' ', said.Notes), StringComparison.OrdinalIgnoreCase);
        Assert.Contains(said.Cautions, c => c.Contains("can kill", StringComparison.Ordinal));
        Assert.Contains(said.Cautions, c => c.Contains("licensed electrician", StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_figure_never_passes()
    {
        foreach (var module in new[] { Full with { VocV = null }, Full with { VmpV = null }, Full with { IscA = null }, Full with { ImpA = null }, Full with { HighestSystemV = null } })
            Assert.Equal(Verdict.CannotTell, StringCheck.On(new ModuleArray("a", module, 12, 1, Plane.Level), Inverter, Place).Verdict);
        foreach (var inverter in new[] { Inverter with { HighestInputV = null }, Inverter with { TrackingFromV = null }, Inverter with { TrackingToV = null }, Inverter with { HighestInputA = null }, Inverter with { HighestShortCircuitA = null }, Inverter with { HighestInputW = null } })
            Assert.Equal(Verdict.CannotTell, StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), inverter, Place).Verdict);
        Assert.Equal(Verdict.CannotTell, StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), Inverter, new StringSite(null, 65)).Verdict);
    }

    [Fact]
    public void Without_a_coefficient_the_table_stands_in_and_says_so()
    {
        var cold = StringCheck.ColdVoltage(Full with { VocPerK = null }, -12)!.Value;
        Assert.Equal(38.5 * 1.16, cold.Volts, 1e-9);
        Assert.Contains("table", cold.How, StringComparison.Ordinal);
        Assert.Null(StringCheck.ColdVoltage(Full with { VocPerK = null }, -45)); // colder than the table reaches
    }

    [Fact]
    public void One_module_more_than_the_most_breaks_the_limit_and_the_most_does_not() =>
        Gen.Select(Gen.Double[-35, 10], Gen.Double[300, 1000]).Sample((coldest, limit) =>
        {
            var inverter = Inverter with { HighestInputV = limit };
            StringCheck Check(int inSeries) => StringCheck.On(new ModuleArray("a", Full, inSeries, 1, Plane.Level), inverter, new StringSite(coldest, 65));
            var most = Check(1).MostInSeries!.Value;
            Assert.NotEqual(Verdict.Fails, Check(most).Limits[0].Verdict);
            Assert.Equal(Verdict.Fails, Check(most + 1).Limits[0].Verdict);
        });

    [Fact]
    public void Three_strings_whose_others_feed_more_than_a_module_bears_need_fuses()
    {
        StringLimit Fuse(int strings, double largest) => StringCheck.On(new ModuleArray("a", Full with { LargestFuseA = largest }, 12, strings, Plane.Level), Inverter, Place).Limits[3];
        Assert.Equal("one string: no other feeds it", Fuse(1, 15).Why);
        Assert.Equal("no string fuse is needed for the modules' sake", Fuse(2, 15).Why);      // 11.5 A
        Assert.StartsWith("a fuse in each string is needed: at least 14.4 A", Fuse(3, 15).Why, StringComparison.Ordinal); // 23 A; 1.5625 × 9.2
        Assert.Equal(Verdict.Fails, Fuse(3, 14).Verdict);
    }

    [Fact]
    public void Too_much_current_leaves_power_unused_and_breaks_nothing()
    {
        var check = StringCheck.On(new ModuleArray("a", Full, 10, 1, Plane.Level), Inverter with { HighestInputA = 8 }, Place);
        Assert.Equal(Verdict.LeavesPowerUnused, check.Verdict);
    }

    [Fact]
    public void Mistakes_of_a_data_sheet_are_named_with_what_would_be_plausible()
    {
        Assert.Contains("−0.30 %/°C is written −0.0030", Assert.Throws<ArgumentOutOfRangeException>(() => Full with { VocPerK = -0.30 }).Message, StringComparison.Ordinal);
        Assert.Contains("the sign is minus", Assert.Throws<ArgumentOutOfRangeException>(() => Full with { VocPerK = 0.003 }).Message, StringComparison.Ordinal);
        Assert.Contains("the sign is plus", Assert.Throws<ArgumentOutOfRangeException>(() => Full with { IscPerK = -0.0005 }).Message, StringComparison.Ordinal);
        Assert.Contains("modules in series", Assert.Throws<ArgumentOutOfRangeException>(() => new ModuleArray("a", Full, 0, 1, Plane.Level)).Message, StringComparison.Ordinal);
        Assert.Contains("azimuth turned by 180", Assert.Throws<ArgumentOutOfRangeException>(() => new Plane(-10, 180)).Message, StringComparison.Ordinal);
        var swapped = Full with { VocV = 31.2, VmpV = 38.5 };
        Assert.Contains("270: found Vmp 38.5 V at or above Voc 31.2 V, expected it 15 to 25 % below. Are the two swapped?", swapped.Contradictions());
        Assert.Empty(Full.Contradictions());
    }

    [Fact]
    public void A_contradicting_data_sheet_is_said_with_the_check()
    {
        var said = StringCheck.On(new ModuleArray("a", Full with { VocV = 31.2, VmpV = 38.5 }, 8, 1, Plane.Level), Inverter, Place).Say(CultureInfo.InvariantCulture);
        Assert.Contains(said.Notes, n => n.Contains("swapped", StringComparison.Ordinal));
    }

    [Fact]
    public void The_way_of_wiring_that_fits_best_uses_the_most_modules_within_the_limits()
    {
        var ways = StringCheck.Fitting(Full, 14, Inverter, Place);
        // By hand: 200 V at 65 °C needs 8 in series (7 give 181.7 V), 600 V at −12 °C allows 13 (42.9 V each); two strings exceed 11 A.
        Assert.Equal((13, 1), (ways[0].Array.InSeries, ways[0].Array.Strings));
        Assert.Equal(Verdict.WithinTheData, ways[0].Verdict);
        Assert.All(ways, w => Assert.InRange(w.Array.InSeries, 8, 13));
        Assert.Equal(Enumerable.Range(8, 6).Reverse(), ways.Select(w => w.Array.InSeries));
    }

    [Fact]
    public void On_a_controller_the_battery_sets_the_fewest_in_series()
    {
        var controller = new ControllerType("60 A") { HighestInputV = 150, HighestChargeA = 60, HighestShortCircuitA = 70 };
        var ways = StringCheck.Fitting(Full, 9, controller, Place with { AbsorptionV = 57.6, EmptyV = 48 });
        Assert.All(ways, w => Assert.Equal(3, w.Array.InSeries)); // 2 give 51.9 V at 65 °C for 62.6 V; 4 give 171.7 V at −12 °C for 150 V
        Assert.Equal(3, ways[0].Array.Strings);
    }
}
