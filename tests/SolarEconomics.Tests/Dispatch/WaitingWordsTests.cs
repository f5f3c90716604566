using System.Globalization;

namespace SolarEconomics.Tests;

public class WaitingWordsTests
{
    [Fact]
    public void A_run_tells_of_each_waiting_load_what_came_in_time_late_and_not_at_all()
    {
        // By hand: 3 kWh at 1 kW from 10 to 13 h, the grid is out from 11 to 13 h. One kWh comes in time; of the two that lack one comes by 14 h, when its time is over.
        var outages = Enumerable.Range(0, 24).Select(hour => hour is 11 or 12).ToArray();
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(24), new double[24]))
        {
            GridIsOut = outages, Deferrable = [new DeferrableLoad("water", 3, 1, HourSpan.Parse("10:00-13:00")) { LateHours = 1 }],
        };
        var flows = new EnergySystem().Run(conditions, Control.SelfConsumption);
        var water = flows.Deferrable[0];
        Assert.Equal((1.0, 1.0, 1.0), (water.InTimeKwh, water.ServedLateKwh, water.MissedKwh));
        Assert.Equal(1, flows.Totals.UnservedKwh, 9);
        var table = flows.Say(CultureInfo.InvariantCulture).Tables[^1];
        Assert.Equal("Loads that may wait, kWh", table.Caption);
        Assert.Equal(["water", "1.0", "1.0", "1.0"], Assert.Single(table.Rows));
    }

    [Fact]
    public void A_run_without_waiting_loads_has_no_table_of_them() =>
        Assert.DoesNotContain(Made.Run(new EnergySystem(), [1], [1]).Say(CultureInfo.InvariantCulture).Tables, t => t.Caption.StartsWith("Loads that may wait", StringComparison.Ordinal));

    [Theory]
    [InlineData(5, true)]
    [InlineData(4, false)]
    public void A_waiting_load_that_its_own_hours_cannot_hold_is_named(double kwhPerDay, bool isNamed)
    {
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(24), new double[24])) { Deferrable = [new DeferrableLoad("car", kwhPerDay, 2, HourSpan.Parse("23:00-01:00"))] };
        var notes = string.Join(' ', new EnergySystem().Run(conditions, Control.SelfConsumption).Say(CultureInfo.InvariantCulture).Notes);
        Assert.Equal(isNamed, notes.Contains("\"car\" asks for 5 kWh a day, and its hours 23:00–01:00 at 2 kW hold 4", StringComparison.Ordinal));
    }

    [Fact]
    public void No_hours_contain_no_minute_and_a_day_has_24()
    {
        Assert.False(default(HourSpan).Contains(0));
        Assert.False(default(HourSpan).Contains(720));
        Assert.Equal([0, 24, 2, 2.5], new[] { default, HourSpan.WholeDay, HourSpan.Parse("23:00-01:00"), HourSpan.Parse("10:00-12:30") }.Select(h => h.Hours));
    }
}
