using NodaTime;

namespace SolarEconomics.Tests;

public class BadInputTests
{
    [Fact]
    public void An_efficiency_in_per_cent_is_asked_back_with_its_field()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new Battery { UsableKwh = 5, ChargeEfficiency = 95 });
        Assert.Equal("ChargeEfficiency", error.ParamName);
        Assert.Contains("If you mean 95 %, write 0.95.", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Converter { ToAc = 1.02 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new Converter { ToDc = double.NaN });
    }

    [Fact]
    public void A_value_handed_to_a_constructor_is_judged_as_one_that_is_set()
    {
        Assert.Equal("Share", Assert.Throws<ArgumentOutOfRangeException>(() => new BackupReserve(Control.SelfConsumption, 20)).ParamName);
        Assert.Equal("RatedKw", Assert.Throws<ArgumentOutOfRangeException>(() => new Generator(0, new FuelLine(0.1, 0.3))).ParamName);
        Assert.Equal("LitresPerKwh", Assert.Throws<ArgumentOutOfRangeException>(() => new FuelLine(0.1, double.NaN)).ParamName);
        Assert.Equal("MostKw", Assert.Throws<ArgumentOutOfRangeException>(() => new DeferrableLoad("car", 5, -1, HourSpan.WholeDay)).ParamName);
        Assert.Equal("PowerLeftAtFull", Assert.Throws<ArgumentOutOfRangeException>(() => new ChargeTaper(0.8, 0)).ParamName);
        Assert.Equal("StandbyW", Assert.Throws<ArgumentOutOfRangeException>(() => new Converter { StandbyW = double.PositiveInfinity }).ParamName);
    }

    [Fact]
    public void What_was_handed_over_is_named_as_its_caller_named_it()
    {
        Assert.Equal("roundTrip", Assert.Throws<ArgumentOutOfRangeException>(() => Battery.Of(10, 92)).ParamName);
        Assert.Equal("usableShare", Assert.Throws<ArgumentOutOfRangeException>(() => Battery.OfAmpHours(200, 48, 50)).ParamName);
        // A slip above 1 is no percentage.
        Assert.DoesNotContain("1.2 %", Assert.Throws<ArgumentOutOfRangeException>(() => new Battery { UsableKwh = 5, ChargeEfficiency = 1.2 }).Message, StringComparison.Ordinal);
        Assert.Contains("4,500 W is written 4.5", Assert.Throws<ArgumentOutOfRangeException>(() => new Generator(4500, new FuelLine(0.1, 0.3))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Control.Of(" ", _ => Order.Rest));
    }

    [Fact]
    public void An_order_with_no_upper_end_says_0_or_more()
    {
        var control = Control.Of("mine", _ => Order.Rest with { MostExportKwh = -1 });
        var error = Assert.Throws<ImpossibleOrderException>(() => Made.Run(new EnergySystem(), [1], [1], control));
        Assert.Contains("ordered MostExportKwh -1 in interval 0 (1 Jan 2025, 00:00), expected 0 or more kWh", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_capacity_in_watt_hours_or_amp_hours_is_asked_back()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Battery.Of(9600, 0.9));
        Assert.Contains("A capacity in Wh is divided by 1000 first; one in Ah needs its voltage", error.Message, StringComparison.Ordinal);
        Assert.Equal(9.6, Battery.OfAmpHours(200, 48, 0.8).NameplateKwh, 12);
        Assert.Equal(7.68, Battery.OfAmpHours(200, 48, 0.8).UsableKwh, 12);
    }

    [Fact]
    public void A_reserve_above_the_capacity_makes_no_interval_feasible_and_is_refused()
    {
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 5, ReserveKwh = 6 } };
        var error = Assert.Throws<ArgumentException>(() => Made.Run(system, [1], [1]));
        Assert.Equal("Found ReserveKwh 6 kWh, expected 0 to the usable 5 kWh of the battery.", error.Message);
    }

    [Fact]
    public void More_usable_energy_than_the_nameplate_holds_is_refused_by_a_run_and_by_a_sweep()
    {
        var battery = new Battery { UsableKwh = 10, NameplateKwh = 9.6 };
        var error = Assert.Throws<ArgumentException>(() => Made.Run(new EnergySystem { Battery = battery }, [1], [1]));
        Assert.StartsWith("Found UsableKwh 10 kWh above NameplateKwh 9.6 kWh, expected at most the nameplate.", error.Message, StringComparison.Ordinal);
        var sweep = BatterySweep.Of(new Conditions(LoadSeries.Of(Made.HoursOf(1), new[] { 1.0 })));
        Assert.Equal(error.Message, Assert.Throws<ArgumentException>(() => sweep.Run([new BatteryCase(battery)], 1)).Message);
        Made.Run(new EnergySystem { Battery = battery with { UsableKwh = 9.6 } }, [1], [1]);
    }

    [Fact]
    public void Temperature_limits_that_are_no_numbers_or_stand_upside_down_are_refused()
    {
        Assert.Equal("ChargeFromC", Assert.Throws<ArgumentOutOfRangeException>(() => new TemperatureLimits(double.NaN, -10, 45)).ParamName);
        Assert.Equal("UntilC", Assert.Throws<ArgumentOutOfRangeException>(() => new TemperatureLimits(0, -10, 45) with { UntilC = 318 }).ParamName);
        var battery = new Battery { UsableKwh = 5, Temperatures = new TemperatureLimits(45, -10, 0) };
        Assert.StartsWith("Found temperature limits with ChargeFromC 45 °C and UntilC 0 °C, expected the lower limit first",
            Assert.Throws<ArgumentException>(() => Made.Run(new EnergySystem { Battery = battery }, [1], [1])).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found temperature limits with DischargeFromC 50 °C", Assert.Throws<ArgumentException>(() =>
            Made.Run(new EnergySystem { Battery = battery with { Temperatures = new TemperatureLimits(0, 50, 45) } }, [1], [1])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_outside_its_range_is_told_with_the_range()
    {
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(2), new[] { 1.0, 1 }));
        Assert.Equal("Found 150 as temperature of the battery in °C in interval 1 (1 Jan 2025, 01:00), expected a number from -60 to 120.", Assert.Throws<ArgumentException>(() =>
            new EnergySystem().Run(conditions with { BatteryC = new[] { 20.0, 150 } }, Control.SelfConsumption)).Message);
        Assert.Equal("Found NaN as export limit in kW in interval 0 (1 Jan 2025, 00:00), expected a number from 0 to 1000, or infinity for no limit; 4,500 W is written 4.5.", Assert.Throws<ArgumentException>(() =>
            new EnergySystem().Run(conditions with { MostExportKw = new[] { double.NaN, 1 } }, Control.SelfConsumption)).Message);
    }

    [Fact]
    public void A_gap_in_a_load_is_named_with_its_local_time()
    {
        var time = Timeline.Of(new IntervalGrid(Instant.FromUtc(2025, 7, 1, 0, 0), Duration.FromHours(1), 3), Made.Dublin);
        var error = Assert.Throws<ArgumentException>(() => LoadSeries.Of(time, new[] { 1, double.NaN, 1 }));
        Assert.Contains("load \"home\" in interval 1 (1 Jul 2025, 02:00)", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1, 0, "ChargeKwh"), InlineData(9, 0, "ChargeKwh"), InlineData(double.NaN, 0, "ChargeKwh"), InlineData(0, 9, "DischargeKwh"), InlineData(1, 1, "DischargeKwh")]
    public void An_impossible_order_is_named_and_never_clamped(double charge, double discharge, string field)
    {
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 8, StoredAtStartKwh = 4, MostChargeKw = 3, MostDischargeKw = 3 } };
        var error = Assert.Throws<ImpossibleOrderException>(() => Made.Run(system, [5, 5], [1, 1], Control.Of("greedy", _ => new Order(charge, discharge))));
        Assert.Equal((field, 0), (error.Field, error.Interval));
        Assert.Contains("Control \"greedy\" ordered", error.Message, StringComparison.Ordinal);
        Assert.Contains("(1 Jan 2025, 00:00)", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Charging_beyond_the_connection_and_exporting_beyond_its_limit_are_refused()
    {
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 8, StoredAtStartKwh = 4 }, Grid = new GridConnection { MostImportKw = 2, MostExportKw = 1 } };
        Assert.Contains("what the grid connection leaves", Assert.Throws<ImpossibleOrderException>(() =>
            Made.Run(system, [0], [1], Control.Of("fill", _ => Order.Charge(2)))).Message, StringComparison.Ordinal);
        Assert.Contains("the export limit binds", Assert.Throws<ImpossibleOrderException>(() =>
            Made.Run(system, [0], [1], Control.Of("sell", _ => Order.Discharge(3)))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_in_a_record_is_no_time_line()
    {
        Instant At(int hour) => Instant.FromUtc(2025, 1, 1, hour, 0);
        var channel = new Channel("meter", FlowKind.Use, [At(0), At(2)], [At(1), At(3)], [1, 1], [Quality.Good, Quality.Good]);
        Assert.Contains("Found interval 1 of \"meter\"", Assert.Throws<ArgumentException>(() => LoadSeries.Of(channel, Made.Dublin)).Message, StringComparison.Ordinal);
    }
}
