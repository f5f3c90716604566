using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Input that can never be meant is named, with field, local time and values; what can be but seldom is, is asked back in the result.</summary>
public class ImpossibleInputTests
{
    private static readonly double[] s_one = [1.0, 1];
    private static readonly FuelLine s_fuel = new(0.1, 0.3);

    [Theory]
    [InlineData("MostChargeKw"), InlineData("MostKw"), InlineData("MostImportKw"), InlineData("RatedKw"), InlineData("Kw"), InlineData("MostToAcKw")]
    public void A_power_in_watts_is_asked_back_with_its_field(string field)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => field switch
        {
            "MostChargeKw" => (object)Battery.Of(8, 0.9, 3000),
            "MostKw" => new DeferrableLoad("car", 5, 11_000, HourSpan.WholeDay),
            "MostImportKw" => new GridConnection { MostImportKw = 14_000 },
            "RatedKw" => new Generator(5000, s_fuel),
            "Kw" => new LoadBlock("car", 7400, HourSpan.WholeDay),
            _ => new Converter { MostToAcKw = 4600 },
        });
        Assert.Equal(field, error.ParamName);
        Assert.Contains("4,500 W is written 4.5", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_load_and_no_generator_takes_hours_of_no_length()
    {
        Assert.Equal("Between", Assert.Throws<ArgumentException>(() => new DeferrableLoad("car", 5, 2, default)).ParamName);
        Assert.Equal("Between", Assert.Throws<ArgumentException>(() => new LoadBlock("car", 2, default)).ParamName);
        Assert.Equal("QuietHours", Assert.Throws<ArgumentException>(() => new Generator(5, s_fuel) { QuietHours = [default] }).ParamName);
    }

    [Fact]
    public void Hours_that_no_interval_starts_in_are_named_with_the_interval_that_swallows_them()
    {
        var car = new DeferrableLoad("car", 5, 20, HourSpan.Parse("12:15-12:45"));
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(24), new double[24])) { Deferrable = [car] };
        var error = Assert.Throws<ArgumentException>(() => new EnergySystem().Run(conditions, Control.SelfConsumption));
        Assert.StartsWith("Found load \"car\" with the hours 12:15–12:45 inside interval 12 (1 Jan 2025, 12:00, 1 h long)", error.Message, StringComparison.Ordinal);
        // 1 January 2025 is a Wednesday; on a Friday the load never comes up.
        new EnergySystem().Run(conditions with { Deferrable = [car with { Days = [IsoDayOfWeek.Friday] }] }, Control.SelfConsumption);
        new EnergySystem().Run(conditions with { Deferrable = [car with { Between = HourSpan.Parse("12:15-13:15") }] }, Control.SelfConsumption);
    }

    [Fact]
    public void Limits_that_leave_nothing_to_do_are_refused()
    {
        static string Refused(EnergySystem system, Func<Conditions, Conditions>? change = null)
        {
            var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(2), s_one)) { Arrays = [ArraySupply.Ac("roof", s_one)] };
            return Assert.Throws<ArgumentException>(() => system.Run(change?.Invoke(conditions) ?? conditions, Control.SelfConsumption)).Message;
        }

        Assert.Contains("Off-grid is written GridConnection.None", Refused(new EnergySystem { Grid = new GridConnection { MostImportKw = 0, MostExportKw = 0 } }), StringComparison.Ordinal);
        Assert.StartsWith("Found quiet hours 20:00–08:00, 08:00–20:00", Refused(new EnergySystem
        {
            Generator = new Generator(5, s_fuel) { QuietHours = [HourSpan.Parse("20:00-08:00"), HourSpan.Parse("08:00-20:00")] },
        }), StringComparison.Ordinal);
        var battery = Battery.Of(8, 0.9) with { Temperatures = new TemperatureLimits(0, -10, 45) };
        Assert.StartsWith("Found temperatures of the battery from 68 to 77 °C, 77 °C in interval 0 (1 Jan 2025, 00:00)", Refused(new EnergySystem { Battery = battery },
            conditions => conditions with { BatteryC = new double[] { 77, 68 } }), StringComparison.Ordinal);
        Assert.StartsWith("Found two arrays named \"roof\"", Refused(new EnergySystem(), conditions => conditions with { Arrays = [.. conditions.Arrays, .. conditions.Arrays] }), StringComparison.Ordinal);
        Assert.StartsWith("Found 5000 as export limit in kW in interval 1 (1 Jan 2025, 01:00)", Refused(new EnergySystem(), conditions => conditions with { MostExportKw = new double[] { 5, 5000 } }), StringComparison.Ordinal);
    }

    [Fact]
    public void A_generator_that_burns_nothing_is_no_generator()
    {
        Assert.StartsWith("Found a fuel line of 0 L/h per kW and 0.05 L/kWh, 0.05 litres per kWh at full load, expected 0.09 or more",
            Assert.Throws<ArgumentException>(() => new Generator(5, new FuelLine(0, 0.05))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new Generator(5, null!));
        Assert.Equal(0.09, new Generator(5, new FuelLine(0.01, 0.08)).Fuel.LitresPerKwhAt(5, 5), 12);
    }

    [Fact]
    public void A_lead_acid_bank_outside_what_its_laws_say_is_refused()
    {
        var bank = new LeadAcid(400, 20, 48);
        Assert.StartsWith("Expected a current that empties the bank within 240 h: at 0.5 A Peukert's law gives",
            Assert.Throws<ArgumentOutOfRangeException>(() => bank.AsBattery(0.5, 25, 0.5, 4)).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found a bank at -20 °C that loses 0.03 of its capacity per kelvin below 25 °C",
            Assert.Throws<ArgumentException>(() => (bank with { LossPerKelvin = 0.03 }).AsBattery(10, -20, 0.5, 4)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Few_fields_that_passed_unseen_are_judged_now()
    {
        Assert.Equal("Months", Assert.Throws<ArgumentOutOfRangeException>(() => new BackupReserve(Control.SelfConsumption, 0.2) { Months = [13] }).ParamName);
        Assert.Equal("Inner", Assert.Throws<ArgumentNullException>(() => new BackupReserve(null!, 0.2)).ParamName);
        Assert.Equal("HoldBelowPrice", Assert.Throws<ArgumentOutOfRangeException>(() => new TimeShift { HoldBelowPrice = double.NaN }).ParamName);
        Assert.Equal("MonthShares", Assert.Throws<ArgumentOutOfRangeException>(() => new LoadBlock("heat", 2, HourSpan.WholeDay) { MonthShares = [.. Enumerable.Repeat(50.0, 12)] }).ParamName);
        Assert.Equal("Year", Assert.Throws<ArgumentOutOfRangeException>(() => new ArrayRenewal(0, "roof")).ParamName);
        Assert.Equal("LifeKwh", Assert.Throws<ArgumentOutOfRangeException>(() => new BatteryWear(5000, 10, 0, 1000)).ParamName);
        Assert.Equal("Battery", Assert.Throws<ArgumentNullException>(() => new BatteryCase(null!)).ParamName);
        Assert.Equal("Load", Assert.Throws<ArgumentNullException>(() => new Conditions(null!)).ParamName);
        Assert.StartsWith("Found a load of no part", Assert.Throws<ArgumentException>(() => LoadSeries.Of(Made.HoursOf(1), [])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_days_are_no_year_of_a_sweep()
    {
        var sweep = BatterySweep.Of(new Conditions(LoadSeries.Of(Made.HoursOf(48), new double[48])));
        Assert.StartsWith("Found conditions of 2 days in a sweep over 25 years", Assert.Throws<ArgumentException>(() => sweep.Run([new BatteryCase(Battery.Of(5, 1))], 25)).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found conditions of 2 days in a sweep over 25 years", Assert.Throws<ArgumentException>(() => sweep.Preview([new BatteryCase(Battery.Of(5, 1))], 25)).Message, StringComparison.Ordinal);
        Assert.Single(sweep.Run([new BatteryCase(Battery.Of(5, 1))], 1));
    }

    [Fact]
    public void What_can_be_but_is_seldom_meant_is_asked_back_in_the_notes()
    {
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(24), Enumerable.Repeat(0.5, 24).ToArray()))
        {
            Deferrable = [new DeferrableLoad("car", 20, 2, HourSpan.Parse("12:00-20:00"))],
        };
        var notes = new EnergySystem { Battery = Battery.Of(800, 0.9, 3) }.Run(conditions, Control.SelfConsumption).Say(CultureInfo.InvariantCulture).Notes;
        // 24 × 0.5 kWh of the home and 20 kWh of the car are 32 kWh a day; 800 kWh last 25 days.
        Assert.Contains("Please check: the battery's usable 800 kWh hold the use of 25 days. A capacity in Wh is divided by 1,000.", notes);
        Assert.Contains("Please check: the waiting load \"car\" asks for 20 kWh a day, and its hours 12:00–20:00 at 2 kW hold 16: whatever the plant does, the rest is late or given up.", notes);
        var usual = new EnergySystem { Battery = Battery.Of(8, 0.9, 3) }.Run(conditions with { Deferrable = [] }, Control.SelfConsumption).Say(CultureInfo.InvariantCulture).Notes;
        Assert.DoesNotContain(usual, note => note.StartsWith("Please check", StringComparison.Ordinal));
    }
}
