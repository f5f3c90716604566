using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>By hand and as a property over random plants. No published table tells losses by device; the sum over the buses is the naive twin.</summary>
public class LossesByDeviceTests
{
    private static readonly Battery s_battery = new() { UsableKwh = 50, ChargeEfficiency = 0.96, DischargeEfficiency = 0.8 };

    [Fact]
    public void An_AC_coupled_plant_loses_in_inverter_converter_and_battery()
    {
        // By hand: 10 kWh · 0.9 = 9 at the board, 4 used, 5 into the converter, 4.75 at the terminals; then 2 kWh at the board from 2 / 0.9 at the terminals.
        var system = new EnergySystem { Battery = s_battery, Converter = new Converter { ToDc = 0.95, ToAc = 0.9 } };
        var losses = Losses(system, [4, 2], new ArraySupply("roof", Coupling.Ac, new double[] { 10, 0 }) { Efficiency = 0.9 });
        Expect(losses, ("inverter of roof", "feeding in", 1), ("battery", "charging", 4.75 * 0.04), ("battery", "discharging", 2 / 0.9 / 0.8 * 0.2), ("battery", "standing", 0),
            ("converter", "converting", 0.25 + (0.2 / 0.9)));
    }

    [Fact]
    public void A_DC_coupled_plant_loses_in_controller_converter_and_battery()
    {
        // By hand: 10 kWh · 0.98 = 9.8 at the DC bus, 5 of them give the 4 used, 4.8 go to the battery.
        var system = new EnergySystem { Battery = s_battery, Converter = new Converter { ToAc = 0.8 } };
        var losses = Losses(system, [4], new ArraySupply("ground", Coupling.Dc, new double[] { 10 }) { Efficiency = 0.98 });
        Expect(losses, ("controller of ground", "feeding in", 0.2), ("battery", "charging", 4.8 * 0.04), ("battery", "discharging", 0), ("battery", "standing", 0), ("converter", "converting", 1));
    }

    [Fact]
    public void What_a_mixed_plant_curtails_is_no_loss_and_falls_on_its_arrays_in_proportion()
    {
        // By hand: 6 + 4 · 0.5 = 8 kWh could reach the board, 4 are used, so half of each array is taken: 3 of the roof's, 2 of the ground's.
        var system = new EnergySystem { Converter = new Converter { ToAc = 0.5 }, Grid = new GridConnection { MostExportKw = 0 } };
        var losses = Losses(system, [4], new ArraySupply("roof", Coupling.Ac, new double[] { 8 }) { Efficiency = 0.75 },
            new ArraySupply("ground", Coupling.Dc, new double[] { 5 }) { Efficiency = 0.8 });
        Expect(losses, ("inverter of roof", "feeding in", 1), ("controller of ground", "feeding in", 0.5), ("converter", "converting", 1));
        Assert.Equal(6.5, losses.ArraysKwh, 9);
        Assert.Equal(2.5 / 6.5, losses.Share, 9);
    }

    [Fact]
    public void An_array_s_own_limit_loses_nothing()
    {
        // By hand: 10 · 0.9 = 9 kWh behind the inverter, which gives 3: in front of it these were 3 / 0.9.
        var losses = Losses(new EnergySystem(), [4], new ArraySupply("roof", Coupling.Ac, new double[] { 10 }) { Efficiency = 0.9, MostKw = 3 });
        Expect(losses, ("inverter of roof", "feeding in", 3 / 0.9 * 0.1), ("converter", "converting", 0));
    }

    [Fact]
    public void Losses_of_all_devices_add_up_to_what_came_in_and_did_not_come_out() => RandomPlant.Any.Sample(plant =>
    {
        var flows = plant.System.Run(plant.Conditions with { Arrays = [.. plant.Conditions.Arrays.Select(a => a.Coupling is Coupling.Dc ? a with { Efficiency = 0.7 } : a)] }, plant.Control);
        var (losses, totals) = (flows.Losses(), flows.Totals);
        var closes = losses.ArraysKwh + totals.ImportKwh + totals.GeneratorKwh - totals.UseKwh - totals.StandbyKwh - totals.ExportKwh - totals.StoredChangeKwh;
        var ofArrays = losses.Devices.Where(d => d.How == "feeding in").Sum(d => d.Kwh);
        return Math.Abs(closes - losses.TotalKwh) <= 1e-9 && Math.Abs(losses.TotalKwh - ofArrays - totals.LostKwh) <= 1e-9 && losses.Devices.All(d => d.Kwh >= -1e-12);
    }, iter: 10_000);

    [Fact]
    public void Losses_say_themselves_and_stand_in_a_frame()
    {
        var losses = Losses(new EnergySystem { OtherStandbyW = 1000 }, [4], new ArraySupply("roof", Coupling.Ac, new double[] { 10 }) { Efficiency = 0.9 });
        var said = losses.Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal("10.0 %", said.Figure);
        Assert.Equal("of the 10 kWh that arrays brought turned into heat in devices: 1 kWh. Most of it, 1 kWh, was lost in the inverter of roof while feeding in.", said.Words);
        Assert.Equal(["inverter of roof", "feeding in", "1.0"], said.Tables[0].Rows[0]);
        Assert.StartsWith("The plant's own standby, 1 kWh, is its load and no loss", said.Notes[0], StringComparison.Ordinal);
        var frame = losses.ToFrame();
        Assert.Equal(["Device", "How", "Kwh"], frame.ColumnKeys);
        Assert.Equal(losses.Devices.Select(d => d.Kwh), frame.GetColumn<double>("Kwh").Values);
    }

    private static LossesByDevice Losses(EnergySystem system, double[] useKwh, params ArraySupply[] arrays) =>
        system.Run(new Conditions(LoadSeries.Of(Made.HoursOf(useKwh.Length), useKwh)) { Arrays = arrays }, Control.SelfConsumption).Losses();

    private static void Expect(LossesByDevice losses, params (string Device, string How, double Kwh)[] expected)
    {
        Assert.Equal(expected.Select(e => (e.Device, e.How)), losses.Devices.Select(d => (d.Device, d.How)));
        foreach (var (row, want) in losses.Devices.Zip(expected)) Assert.Equal(want.Kwh, row.Kwh, 9);
        Assert.Equal(expected.Sum(e => e.Kwh), losses.TotalKwh, 9);
    }
}
