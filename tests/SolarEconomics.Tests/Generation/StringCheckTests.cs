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

    [Fact]
    public void Margins_are_shares_of_the_limit_and_below_0_where_it_is_passed()
    {
        // By hand: 12 × 38.5 · (1 + 0.0031 · 37) = 515.0 V of 600; 12 × 31.2 · (1 − 0.0042 · 40) = 311.5 V above 200; 8.7 A above 8.
        var check = StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), Inverter with { HighestInputA = 8 }, Place);
        Assert.Equal((600 - (12 * 38.5 * 1.1147)) / 600, check.Limits[0].Margin!.Value, 1e-9);
        Assert.Equal(((12 * 31.2 * 0.832) - 200) / 200, check.Limits.Single(l => l.What.StartsWith("Operating voltage on the hottest", StringComparison.Ordinal)).Margin!.Value, 1e-9);
        Assert.Equal(-0.0875, check.Limits.Single(l => l.Unit == "A" && l.Verdict == Verdict.LeavesPowerUnused).Margin!.Value, 1e-9);
        Assert.Contains(check.Say(CultureInfo.InvariantCulture).Tables[0].Rows, r => r[4].StartsWith("−8.", StringComparison.Ordinal));
        Assert.Null(StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), Inverter with { HighestInputV = null }, Place).Limits[0].Margin);
    }

    [Fact]
    public void The_fuse_is_told_with_its_least_and_largest_rating_or_that_it_cannot_be_told()
    {
        FuseNeed Fuse(int strings, double? largest) => StringCheck.On(new ModuleArray("a", Full with { LargestFuseA = largest }, 12, strings, Plane.Level), Inverter, Place).Fuse;
        Assert.Equal(new FuseNeed(false, 14.375, 15), Fuse(2, 15));
        Assert.Equal(new FuseNeed(true, 14.375, 15), Fuse(3, 15));
        Assert.Equal(new FuseNeed(null, 14.375, null), Fuse(3, null));
        Assert.Equal(false, Fuse(1, null).IsNeeded);
    }

    [Fact]
    public void A_controller_is_checked_at_the_empty_battery_and_at_absorption()
    {
        // CV-P17: 60 A clip at 2,880 W at 48 V and at 3,456 W at 57.6 V.
        var controller = new ControllerType("60 A") { HighestInputV = 150, HighestChargeA = 60, HighestShortCircuitA = 70, Efficiency = 1 };
        var powers = StringCheck.On(new ModuleArray("a", Full, 3, 4, Plane.Level), controller, Place with { AbsorptionV = 57.6, EmptyV = 48 }).Limits.Where(l => l.Unit == "W").ToList();
        Assert.Equal([(3240.0, 2880.0, Verdict.LeavesPowerUnused), (3240.0, 3456.0, Verdict.WithinTheData)], powers.Select(l => (l.Found!.Value, Math.Round(l.Limit!.Value, 9), l.Verdict)));
    }

    [Fact]
    public void Where_the_voltage_s_coefficient_is_unknown_that_of_power_stands_in_and_says_so()
    {
        var limit = StringCheck.On(new ModuleArray("a", Full with { VmpPerK = null }, 12, 1, Plane.Level), Inverter, Place).Limits.Single(l => l.IsLeast);
        Assert.Equal(12 * 31.2 * (1 - (0.0041 * 40)), limit.Found!.Value, 1e-9);
        Assert.EndsWith("the coefficient of power stands in for that of voltage, which is unknown", limit.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_input_has_limits_of_its_own_and_arrays_beside_are_reckoned_in()
    {
        var unequal = Inverter with { EachInput = [new InputLimits(), new InputLimits { TrackingFromV = 400, HighestInputW = 2000 }] };
        Assert.Equal(Verdict.WithinTheData, StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), unequal, Place).Verdict);
        var second = StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), unequal, Place, input: 2);
        Assert.Equal((Verdict.Fails, 400.0), (second.Verdict, second.Limits.Single(l => l.IsLeast).Limit!.Value));
        Assert.Throws<ArgumentOutOfRangeException>(() => StringCheck.On(new ModuleArray("a", Full, 12, 1, Plane.Level), unequal, Place, input: 3));
        // Two arrays that each hold alone: together 17.4 A of 11 A and 23 A of 15 A on one input; 6,480 W of 6,500 W and 9,720 W on two.
        Plant Two(int input, int inSeries) => new Plant([new Device("d", MeasurementPoint.InverterAcOut) { Inverter = Inverter with { Inputs = 2, HighestShortCircuitA = 30 } }])
            .With(new Placement(new ModuleArray("a", Full, 12, 1, Plane.Level), "d"), new Placement(new ModuleArray("b", Full, inSeries, 1, Plane.Level), "d") { Input = input });
        var shared = Two(1, 12).Check(new(2025, 1, 1), Place)[0];
        Assert.Equal((Verdict.LeavesPowerUnused, 17.4), (shared.Verdict, shared.Limits.Single(l => l.What == "Operating current at 1,000 W/m², with b").Found!.Value));
        Assert.Equal(Verdict.WithinTheData, Two(2, 12).Check(new(2025, 1, 1), Place)[0].Verdict);
        var heavy = new Plant([new Device("d", MeasurementPoint.InverterAcOut) { Inverter = Inverter with { Inputs = 2, HighestInputW = 6000 } }])
            .With(new Placement(new ModuleArray("a", Full, 12, 1, Plane.Level), "d"), new Placement(new ModuleArray("b", Full, 12, 1, Plane.Level), "d") { Input = 2 }).Check(new(2025, 1, 1), Place)[0];
        Assert.Equal(("Power against the DC power that the device uses, with b", 6480.0), (heavy.Limits[^1].What, heavy.Limits[^1].Found!.Value));
    }
}
