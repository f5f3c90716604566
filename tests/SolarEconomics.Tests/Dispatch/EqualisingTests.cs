using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Equalising inside the flows. Oracles: by hand, a property over random plants (in BalanceTests), and the yearly sum of the bank; nothing published was found.</summary>
public class EqualisingTests
{
    private const double NeededKwh = 2;
    private static readonly Battery s_full = new() { UsableKwh = 4, StoredAtStartKwh = 4, Equalising = new Equalising(EveryDays: 2, Hours: 4, Kw: 0.5) };

    /// <summary>Days of hours with some power of the sun from 10 to 14 o'clock, and a use of nothing.</summary>
    private static EnergyFlows Run(Battery battery, double sunKw, int days, Control? control = null, Generator? generator = null, double[]? cellC = null, double useKwh = 0) =>
        new EnergySystem { Battery = battery, Grid = GridConnection.None, Generator = generator }.Run(
            new Conditions(LoadSeries.Of(Made.HoursOf(24 * days, 1), Enumerable.Repeat(useKwh, 24 * days).ToArray()))
            {
                Arrays = [ArraySupply.Dc("roof", Enumerable.Range(0, 24 * days).Select(i => i % 24 is >= 10 and < 14 ? sunKw : 0).ToArray())],
                BatteryC = cellC,
            }, control ?? Control.SelfConsumption);

    [Fact]
    public void It_is_due_after_its_days_and_takes_its_energy_from_the_sun_of_a_full_battery()
    {
        var flows = Run(s_full, sunKw: 0.8, days: 3);
        var only = Assert.Single(flows.Equalising);
        Assert.Equal(flows.Time.LocalStartOf(48), only.Due);
        // From 10 to 14 o'clock, four hours of 0.5 kW.
        Assert.Equal(flows.Time.LocalStartOf(48 + 14), only.Done);
        Assert.Equal(14 / 24.0, only.WaitedDays, 12);
        Assert.Equal(NeededKwh, only.Kwh, 12);
        Assert.Equal(NeededKwh, flows.Totals[FlowPath.EqualisingLost], 12);
        Assert.Equal(3 * 4 * 0.8 - NeededKwh, flows.Totals[FlowPath.ArrayCurtailed], 9);
        Assert.Equal(NeededKwh, flows.Totals.LostKwh, 12);
    }

    [Fact]
    public void A_weak_sun_takes_more_days_and_what_went_in_stays_counted()
    {
        var flows = Run(s_full, sunKw: 0.3, days: 5);
        var only = Assert.Single(flows.Equalising);
        // 1.2 kWh on the third day, the missing 0.8 in the first three hours of the fourth.
        Assert.Equal(flows.Time.LocalStartOf(72 + 13), only.Done);
        Assert.Equal(NeededKwh, flows[FlowPath.EqualisingLost].ToArray().Sum(), 12);
        Assert.Equal(0.2, flows[FlowPath.EqualisingLost][72 + 12], 12);
    }

    [Fact]
    public void A_battery_that_is_not_full_is_filled_first_and_the_rest_of_the_power_waits_for_the_next_interval()
    {
        var flows = Run(s_full with { StoredAtStartKwh = 3, Equalising = s_full.Equalising! with { DaysSinceAtStart = 2 } }, sunKw: 0.8, days: 1);
        // 10 to 11: 0.8 of the missing 1 kWh; 11 to 12: the last 0.2; from 12 on beyond full.
        Assert.Equal([0, 0, 0.5, 0.5], flows[FlowPath.EqualisingLost][10..14].ToArray());
        var only = Assert.Single(flows.Equalising);
        Assert.Null(only.Done);
        Assert.Equal(1, only.Kwh, 12);
        Assert.Equal(1, only.WaitedDays, 12);
        Assert.Equal(flows.Time.LocalStartOf(0), only.Due);
    }

    [Fact]
    public void Without_sun_it_waits_and_says_so()
    {
        var flows = Run(s_full, sunKw: 0, days: 10);
        Assert.Equal(0, flows.Totals[FlowPath.EqualisingLost]);
        Assert.Contains("complete 0 of 1 time that it was due, the longest wait 8 days", string.Join(' ', flows.Say(CultureInfo.InvariantCulture).Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_generator_does_it_where_its_control_is_told_to()
    {
        var generator = new Generator(2, new FuelLine(0.1, 0.3));
        Assert.Equal(0, Run(s_full, sunKw: 0, days: 5, new GeneratorStart(), generator).Totals.GeneratorHours);
        var flows = Run(s_full, sunKw: 0, days: 5, new GeneratorStart { Equalises = true }, generator);
        Assert.Equal([48, 49, 50, 51], Enumerable.Range(0, 120).Where(i => flows.GeneratorKwh(i) > 0).Take(4));
        Assert.Equal([NeededKwh, NeededKwh], flows.Equalising.Select(e => Math.Round(e.Kwh, 9)));
        Assert.All(flows.Equalising, e => Assert.NotNull(e.Done));
        // Due after 48 h, complete at 52, due again at 100.
        Assert.Equal(flows.Time.LocalStartOf(100), flows.Equalising[1].Due);
    }

    [Fact]
    public void Too_cold_to_charge_is_too_cold_to_equalise()
    {
        var battery = s_full with { Temperatures = new TemperatureLimits(0, -10, 45) };
        Assert.Equal(0, Run(battery, 0.8, 3, cellC: [.. Enumerable.Repeat(-5.0, 72)]).Totals[FlowPath.EqualisingLost]);
        Assert.Equal(NeededKwh, Run(battery, 0.8, 3, cellC: [.. Enumerable.Repeat(5.0, 72)]).Totals[FlowPath.EqualisingLost], 12);
    }

    [Fact]
    public void Its_power_is_part_of_the_most_that_the_battery_takes()
    {
        var flows = Run(s_full with { MostChargeKw = 0.25 }, 0.8, 4);
        Assert.Equal(0.25, flows[FlowPath.EqualisingLost].ToArray().Max(), 12);
        Assert.Equal(NeededKwh, flows.Totals[FlowPath.EqualisingLost], 12);
    }

    [Fact]
    public void What_was_lost_as_it_stood_overnight_is_filled_first()
    {
        var flows = Run(s_full with { SelfDischargePerMonth = 0.05 }, 0.8, 4);
        // 20 hours at 5 % in 720 hours leave it 0.0014 below full at 10 o'clock, so that the first hour of sun fills it: three hours on the third day, one on the fourth.
        Assert.Equal([0, 0.5, 0.5, 0.5], flows[FlowPath.EqualisingLost][58..62].ToArray());
        Assert.Equal(flows.Time.LocalStartOf(72 + 12), Assert.Single(flows.Equalising).Done);
    }

    [Fact]
    public void A_sunny_year_takes_what_the_bank_says_but_for_the_wait()
    {
        var bank = new LeadAcid(400, 20, 24) { EqualiseHours = 4 };
        var battery = bank.AsBattery(20, 25, 0.5, 4);
        var flows = Run(battery with { StoredAtStartKwh = battery.UsableKwh }, sunKw: 2, days: 365);
        // Done at 14 o'clock it is due 30 days later at 14 o'clock, after the sun, and done on the next day: every 31 days, 11 times.
        Assert.Equal(11, flows.Equalising.Count(e => e.Done is not null));
        Assert.Equal(11 * 4 * 0.03 * 400 * 24 / 1000, flows.Totals[FlowPath.EqualisingLost], 9);
        Assert.InRange(flows.Totals[FlowPath.EqualisingLost] / bank.EqualisingKwhPerYear, 30 / 31.0 - 0.08, 30 / 31.0);
        Assert.Equal(flows.Totals[FlowPath.EqualisingLost], flows.Losses().Devices.Single(d => d.How == "equalising").Kwh, 12);
    }

    [Fact]
    public void Years_carry_its_clock_over_and_a_new_battery_starts_it_again()
    {
        var bank = new Battery { UsableKwh = 4, StoredAtStartKwh = 4, Equalising = new Equalising(400, 4, 0.5) };
        var time = Timeline.Year(2023, Duration.FromHours(1), DateTimeZone.Utc);
        var conditions = new Conditions(LoadSeries.Of(time, new double[time.Count])) { Arrays = [ArraySupply.Dc("roof", Enumerable.Repeat(0.8, time.Count).ToArray())] };
        double[] ByYear(YearsAhead plan) =>
            [.. new EnergySystem { Battery = bank, Grid = GridConnection.None }.RunYears(conditions, Control.SelfConsumption, plan).Years.Select(y => Math.Round(y.Totals[FlowPath.EqualisingLost], 9))];
        // Due 400 days after each end: days 400, 800 and 1,200 and a few hours.
        Assert.Equal([0, 2, 2, 2], ByYear(new YearsAhead(4)));
        // With a new battery every year none gets to be due.
        Assert.Equal([0, 0, 0, 0], ByYear(new YearsAhead(4) { Battery = new BatteryAgeing { MostYears = 1 } }));
    }

    [Fact]
    public void A_sweep_says_that_it_knows_no_equalising()
    {
        var error = Assert.Throws<ArgumentException>(() => BatteryNumbers.Of(new BatteryCase(s_full)));
        Assert.Contains(nameof(Battery.Equalising), error.Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(0.5, 4, 0.5), InlineData(30, 0, 0.5), InlineData(30, 25, 0.5), InlineData(30, 4, 0), InlineData(30, 4, double.NaN)]
    public void Values_out_of_range_are_refused(double days, double hours, double kw) => Assert.Throws<ArgumentOutOfRangeException>(() => new Equalising(days, hours, kw));
}
