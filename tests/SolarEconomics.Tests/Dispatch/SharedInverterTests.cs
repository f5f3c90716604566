using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>By hand, as a property over random plants, and against one array that makes what both make. No published table has shared inverters.</summary>
public class SharedInverterTests
{
    private static readonly SharedInverter s_flat = new("hall", new InverterType("5 kW", 5000) { Efficiency = EfficiencyCurve.Flat(0.9) });

    [Fact]
    public void Two_arrays_share_the_power_limit_and_what_is_clipped_by_what_each_brings()
    {
        // By hand: 6 + 2 = 8 kWh in front, 7.2 behind, 5 given in an hour; 2.2 clipped, three quarters of it of the east side.
        var flows = Run(new EnergySystem(), 1, s_flat, [6], [2]);
        Expect(flows, ("east", 5.4, 1.65, 0, 3.75), ("west", 1.8, 0.55, 0, 1.25));
        Assert.Equal(2.2, flows.Totals[FlowPath.ArrayCurtailed], 9);
        var loss = flows.Losses().Devices[0];
        Assert.Equal(("hall", "feeding in"), (loss.Device, loss.How));
        Assert.Equal((5 / 0.9) - 5, loss.Kwh, 9);
    }

    [Fact]
    public void Sides_that_shine_at_different_hours_are_not_clipped_where_together_they_would_be()
    {
        // By hand: 5 kWh each in their own hour fit below 5 kW behind 90 %; both in one hour do not.
        Assert.Equal(0, Run(new EnergySystem(), 1, s_flat, [5, 0], [0, 5]).Totals[FlowPath.ArrayCurtailed], 9);
        Assert.Equal(4, Run(new EnergySystem(), 1, s_flat, [5, 0], [5, 0]).Totals[FlowPath.ArrayCurtailed], 9);
    }

    [Fact]
    public void The_board_s_curtailment_stands_beside_what_was_clipped()
    {
        // By hand: 5 kWh given, 1 used and none exported: a fifth of each side is fed in.
        var flows = Run(new EnergySystem { Grid = new GridConnection { MostExportKw = 0 } }, 1, s_flat, [6], [2]);
        Expect(flows, ("east", 5.4, 1.65, 3, 0.75), ("west", 1.8, 0.55, 1, 0.25));
    }

    [Fact]
    public void Both_work_on_the_efficiency_curve_of_their_sum()
    {
        // By hand: a quarter kWh of each in an hour is what the inverter takes to give a tenth of 5 kW at its 90 %: 0.5 / 0.9.
        var curved = s_flat with { Type = new InverterType("5 kW", 5000) { Efficiency = EfficiencyCurve.Through(0.90, 0.96, 0.955) } };
        var flows = Run(new EnergySystem(), 0, curved, [0.25 / 0.9], [0.25 / 0.9]);
        Assert.Equal(0.5, flows.Totals.ExportKwh, 9);
        Assert.Equal((0.5 / 0.9) - 0.5, flows.Losses().TotalKwh, 9);
    }

    [Fact]
    public void The_highest_input_power_clips_in_front()
    {
        // By hand: 4 kW at the input give 3.6 of the 7.2 kW that 8 would.
        var inverter = s_flat with { Type = new InverterType("5 kW", 5000) { Efficiency = EfficiencyCurve.Flat(0.9), HighestInputW = 4000 } };
        Expect(Run(new EnergySystem(), 1, inverter, [6], [2]), ("east", 5.4, 2.7, 0, 2.7), ("west", 1.8, 0.9, 0, 0.9));
    }

    [Fact]
    public void Every_plant_with_a_shared_inverter_closes_and_its_arrays_add_up() => RandomPlant.Any.Sample(plant =>
    {
        var inverter = new SharedInverter("hall", new InverterType("2 kW", 2000) { HighestInputW = 2100 });
        var roof = plant.Conditions.Arrays[0];
        ArraySupply Side(string name, double share) => ArraySupply.Ac(name, roof.PotentialKwh.ToArray().Select(kwh => kwh * share).ToArray()) with { Inverter = inverter };
        var flows = plant.System.Run(plant.Conditions with { Arrays = [Side("east", 0.7), plant.Conditions.Arrays[1], Side("west", 0.3)] }, plant.Control);
        var (arrays, totals, losses) = (flows.ByArray(), flows.Totals, flows.Losses());
        var closes = losses.ArraysKwh + totals.ImportKwh + totals.GeneratorKwh - totals.UseKwh - totals.StandbyKwh - totals.ExportKwh - totals.StoredChangeKwh;
        return Math.Abs(closes - losses.TotalKwh) <= 1e-9
            && Math.Abs(arrays.Sum(a => a.FedInKwh) - totals.GenerationKwh) <= 1e-9
            && Math.Abs(arrays.Sum(a => a.ClippedKwh + a.CurtailedKwh) - totals[FlowPath.ArrayCurtailed]) <= 1e-9
            && Math.Abs((arrays[0].FedInKwh * 0.3) - (arrays[1].FedInKwh * 0.7)) <= 1e-9
            && arrays.All(a => a.ClippedKwh >= -1e-9 && a.CurtailedKwh >= -1e-9);
    }, iter: 10_000);

    [Fact]
    public void An_efficiency_of_its_own_or_another_type_of_one_name_is_refused()
    {
        var east = ArraySupply.Ac("east", new double[] { 1 }) with { Inverter = s_flat };
        Assert.Contains("Found array \"east\" behind the shared inverter \"hall\" with coupling Ac, efficiency 0.9",
            Assert.Throws<ArgumentException>(() => Run(east with { Efficiency = 0.9 })).Message, StringComparison.Ordinal);
        Assert.Contains("\"hall\" as type \"6 kW\" and as type \"5 kW\"",
            Assert.Throws<ArgumentException>(() => Run(east, east with { Name = "west", Inverter = s_flat with { Type = new InverterType("6 kW", 6000) } })).Message, StringComparison.Ordinal);
    }

    private static EnergyFlows Run(EnergySystem system, double useKwh, SharedInverter inverter, double[] east, double[] west) =>
        system.Run(new Conditions(LoadSeries.Of(Made.HoursOf(east.Length), Enumerable.Repeat(useKwh, east.Length).ToArray()))
        {
            Arrays = [ArraySupply.Ac("east", east) with { Inverter = inverter }, ArraySupply.Ac("west", west) with { Inverter = inverter }],
        }, Control.SelfConsumption);

    private static EnergyFlows Run(params ArraySupply[] arrays) =>
        new EnergySystem().Run(new Conditions(LoadSeries.Of(Made.HoursOf(1), new double[1])) { Arrays = arrays }, Control.SelfConsumption);

    private static void Expect(EnergyFlows flows, params (string Name, double Potential, double Clipped, double Curtailed, double FedIn)[] expected)
    {
        foreach (var (array, want) in flows.ByArray().Zip(expected))
        {
            Assert.Equal(want.Name, array.Name);
            Assert.Equal([want.Potential, want.Clipped, want.Curtailed, want.FedIn], [array.PotentialKwh, array.ClippedKwh, array.CurtailedKwh, array.FedInKwh], (a, b) => Math.Abs(a - b) < 1e-9);
        }
    }
}
