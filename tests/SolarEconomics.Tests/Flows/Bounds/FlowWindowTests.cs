using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>By hand and the published row here; the linear program as the naive twin stands in the tests of the solvers.</summary>
public class FlowWindowTests
{
    [Fact]
    public void A_net_meter_leaves_the_self_use_of_a_half_hour_open()
    {
        // CV-P22: load 2 kW throughout, 4 kW of sun for the first 15 minutes. True: 0.5 used, 0.5 exported, 0.5 imported.
        var bounds = new FlowWindow { Generation = Kwh(1), NetImport = Kwh(0) }.Bounds();
        Assert.Equal(new EnergyRange(0, 1), bounds.ArrayToUse);
        Assert.Equal(new EnergyRange(0, 1), bounds.Records.Export);
        Assert.Equal(Kwh(1), bounds.Records.Use);
        Assert.True(bounds.ArrayToUse.Contains(0.5));
    }

    [Fact]
    public void One_more_register_settles_it() =>
        Assert.Equal(Kwh(0.5), new FlowWindow { Generation = Kwh(1), NetImport = Kwh(0), Export = Kwh(0.5) }.Bounds().ArrayToUse);

    [Fact]
    public void A_net_export_is_export_at_least() =>
        Assert.Equal(new EnergyRange(0, 4), new FlowWindow { Generation = Kwh(7), NetImport = Kwh(-3) }.Bounds().ArrayToUse);

    [Fact]
    public void A_lifetime_counter_alone_says_that_between_none_and_all_was_used()
    {
        var bounds = new FlowWindow { Generation = new EnergyRange(4900, 5100) }.Bounds();
        Assert.Equal(new EnergyRange(0, 5100), bounds.ArrayToUse);
        Assert.Equal(double.PositiveInfinity, bounds.GridToUse.HighKwh);
    }

    [Fact]
    public void Counters_at_every_point_of_a_plant_with_a_battery_still_leave_the_flows_between_open()
    {
        // By hand: 10 made, 4 sent, 3 stored, 2 given back, 5 taken. All that was sent may have come from the array (6 kept, of them 3 stored, 3 used),
        // or 2 of it from the battery (2 sent by the array, 8 kept); the battery may have been charged by the array, the grid or both.
        var bounds = new FlowWindow { Generation = Kwh(10), Export = Kwh(4), Import = Kwh(5), Charge = Kwh(3), Discharge = Kwh(2) }.Bounds();
        Assert.Equal(new EnergyRange(2, 4), bounds.ArrayToExport);
        Assert.Equal(new EnergyRange(6, 8), bounds.KeptOnSite);
        Assert.Equal(new EnergyRange(3, 8), bounds.ArrayToUse);
        Assert.Equal(new EnergyRange(0, 3), bounds.ArrayToBattery);
        Assert.Equal(new EnergyRange(0, 2), bounds.BatteryToUse);
        Assert.Equal(Kwh(10), bounds.Records.Use);
    }

    [Fact]
    public void What_happened_lies_inside_the_bounds_of_every_record_of_it() =>
        Gen.Select(Gen.Double[0, 5].Array[7], Gen.Double[0, 1].Array[6]).Sample((flow, doubt) =>
        {
            // Array to use, battery, export; grid to use, battery; battery to use, export; and a meter accuracy for each record.
            EnergyRange Read(double kwh, int k) => new(kwh * (1 - (doubt[k] / 20)), kwh * (1 + (doubt[k] / 20)));
            var (generation, import, export) = (flow[0] + flow[1] + flow[2], flow[3] + flow[4], flow[2] + flow[6]);
            var window = new FlowWindow
            {
                Generation = Read(generation, 0), Charge = Read(flow[1] + flow[4], 1), Discharge = Read(flow[5] + flow[6], 2),
                Import = doubt[3] < 0.5 ? EnergyRange.AtLeast(0) : Read(import, 3),
                Export = doubt[4] < 0.5 ? EnergyRange.AtLeast(0) : Read(export, 4),
                NetImport = doubt[5] < 0.5 ? EnergyRange.Unbounded : EnergyRange.Exactly(import - export),
            };
            var bounds = window.Bounds();
            EnergyRange[] found = [bounds.ArrayToUse, bounds.ArrayToBattery, bounds.ArrayToExport, bounds.GridToUse, bounds.GridToBattery, bounds.BatteryToUse, bounds.BatteryToExport];
            for (var k = 0; k < found.Length; k++)
                Assert.True(flow[k] >= found[k].LowKwh - 1e-9 && flow[k] <= found[k].HighKwh + 1e-9, $"flow {k}: {flow[k]} outside {found[k]}");
        });

    [Fact]
    public void Records_that_cannot_all_be_true_are_named_with_their_distance()
    {
        var window = new FlowWindow { Generation = Kwh(3), Export = Kwh(5) };
        Assert.Equal("Found records that cannot all be true: export of at least 5 kWh against generation of at most 3 kWh and discharge of at most 0 kWh, 2 kWh apart; " +
            "expected what comes in to equal what goes out. Widen a record by its meter's accuracy, or leave the doubtful one out.",
            Assert.Throws<RecordException>(() => window.Bounds()).Message);
    }

    [Theory]
    [InlineData(-1, 2, "expected 0 or more")]
    [InlineData(3, 2, "a low end no higher than the high end")]
    [InlineData(double.NaN, 2, "expected 0 or more")]
    [InlineData(1, double.NaN, "a low end no higher than the high end")]
    public void A_range_that_is_none_is_refused(double low, double high, string expected) =>
        Assert.Contains(expected, Assert.Throws<ArgumentOutOfRangeException>(() => new FlowWindow { Use = new EnergyRange(low, high) }.Bounds()).Message, StringComparison.Ordinal);

    private static EnergyRange Kwh(double kwh) => EnergyRange.Exactly(kwh);
}
