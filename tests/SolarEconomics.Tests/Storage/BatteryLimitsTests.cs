namespace SolarEconomics.Tests;

/// <summary>Power by C-rate and the limits of temperature, by hand.</summary>
public class BatteryLimitsTests
{
    [Fact]
    public void A_C_rate_counts_from_the_nameplate()
    {
        var battery = new Battery { UsableKwh = 9, NameplateKwh = 10 }.WithCRate(0.5, 1);
        Assert.Equal((5, 10), (battery.MostChargeKw, battery.MostDischargeKw));
        Assert.Equal((4.5, 9), (new Battery { UsableKwh = 9 }.WithCRate(0.5, 1).MostChargeKw, new Battery { UsableKwh = 9 }.WithCRate(0.5, 1).MostDischargeKw));
    }

    [Fact]
    public void A_C_rate_limits_a_run()
    {
        var flows = Made.Run(new EnergySystem { Battery = new Battery { UsableKwh = 10 }.WithCRate(0.2, 0.1) }, [5, 0, 0], [0, 0, 5]);
        Assert.Equal([0, 2, 2, 1], flows.StoredKwh.ToArray());
    }

    [Fact]
    public void A_C_rate_in_kilowatts_of_a_large_battery_or_below_zero_is_refused()
    {
        Assert.Equal("charge", Assert.Throws<ArgumentOutOfRangeException>(() => new Battery { UsableKwh = 9 }.WithCRate(25, 1)).ParamName);
        Assert.Equal("discharge", Assert.Throws<ArgumentOutOfRangeException>(() => new Battery { UsableKwh = 9 }.WithCRate(1, double.NaN)).ParamName);
    }

    [Fact]
    public void A_cold_battery_rests_and_gives_again_before_it_takes()
    {
        var battery = new Battery { UsableKwh = 10, StoredAtStartKwh = 5, Temperatures = new TemperatureLimits(0, -10, 45) };
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(6), new double[] { 1, 0, 1, 0, 1, 0 }))
        {
            Arrays = [ArraySupply.Ac("roof", new double[] { 0, 2, 0, 2, 0, 2 })], BatteryC = new double[] { -15, -15, -5, -5, 50, 0 },
        };
        var flows = new EnergySystem { Battery = battery }.Run(conditions, Control.SelfConsumption);
        // By hand: rest at -15 °C, give but not take at -5 °C, rest at 50 °C, take at 0 °C, the limit itself.
        Assert.Equal([5, 5, 5, 4, 4, 4, 6], flows.StoredKwh.ToArray());
        Assert.Equal([0, 2, 0, 2, 0, 0], flows[FlowPath.ArrayToExport].ToArray());
        Assert.Equal([1, 0, 0, 0, 1, 0], flows[FlowPath.GridToUse].ToArray());
    }
}
