using CsCheck;

namespace SolarEconomics.Tests;

public class GeneratorTests
{
    private static readonly EnergySystem s_refuge = new()
    {
        Battery = new Battery { UsableKwh = 10, StoredAtStartKwh = 4, ChargeEfficiency = 0.9 },
        Converter = new Converter { ToDc = 0.8, ToAc = 0.9 },
        Grid = GridConnection.None,
        Generator = new Generator(4, new FuelLine(0.1, 0.3)) { FuelPricePerLitre = 2, MaintenancePerHour = 1 },
    };

    [Fact]
    public void It_starts_below_the_start_level_and_runs_to_the_stop_level()
    {
        var use = Enumerable.Repeat(1.0, 12).ToArray();
        var flows = Made.Run(s_refuge, new double[12], use, new GeneratorStart { StartBelowShare = 0.2, StopAboveShare = 0.6 });
        // By hand: 1 kWh of use takes 1/0.9 from the battery, so 4, 2.89, 1.78 kWh; then 3 kWh an hour at the board bring 3 × 0.8 × 0.9 into the cells.
        Assert.Equal([4, 4 - (1 / 0.9), 4 - (2 / 0.9), 4 - (2 / 0.9) + 2.16], flows.StoredKwh[..4].ToArray().Select(s => Math.Round(s, 10)).ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(0, flows.Totals.UnservedKwh, 12);
        Assert.Equal(12, flows.Totals.UseKwh, 12);
        Assert.True(flows.GeneratorKwh(3) > 0 && flows.GeneratorKwh(1) == 0);
    }

    [Fact]
    public void Charging_keeps_the_sun_of_the_DC_bus_before_it_draws_on_the_board()
    {
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(1), new double[] { 2 })) { Arrays = [new ArraySupply("wall", Coupling.Dc, new double[] { 1 })] };
        var low = s_refuge with { Battery = s_refuge.Battery! with { StoredAtStartKwh = 1 } };
        var flows = low.Run(conditions, new GeneratorStart());
        // By hand: of 4 kWh, 2 serve the use and 2 go through the charger as 1.6; the array's 1 kWh stays on its bus: 2.6 × 0.9 into the cells.
        Assert.Equal(4, flows.GeneratorKwh(0), 12);
        Assert.Equal(1 + (2.6 * 0.9), flows.StoredKwh[1], 12);
        Assert.Equal(0, flows.Totals.UnservedKwh, 12);
    }

    [Fact]
    public void It_orders_only_what_is_possible_on_any_plant() =>
        RandomPlant.Any.Sample(plant => plant.System.Run(plant.Conditions, new GeneratorStart()).Totals.UnservedKwh >= 0, iter: 10_000, threads: 1);

    [Fact]
    public void Fuel_hours_and_starts_follow_its_running()
    {
        var flows = Made.Run(s_refuge, new double[3], [1, 1, 1], Control.Of("second hour", now => now.Interval == 1 ? new Order { GeneratorKwh = 1 } : now.Cover()));
        // One hour at 1 kWh counts as the least load of 1.2 kW: 0.1 × 4 + 0.3 × 1.2 litres.
        Assert.Equal(0.76, flows.Totals.FuelLitres, 12);
        Assert.Equal((1, 1), (flows.Totals.GeneratorHours, flows.Totals.GeneratorStarts));
        Assert.Equal((0.76 * 2) + 1, flows.Totals.GeneratorCost, 12);
    }

    [Fact]
    public void Quiet_hours_are_kept_even_when_use_goes_unserved()
    {
        var quiet = s_refuge with { Generator = s_refuge.Generator! with { QuietHours = [HourSpan.Parse("00:00-06:00")] } };
        var flows = Made.Run(quiet, new double[12], Enumerable.Repeat(2.0, 12).ToArray(), new GeneratorStart());
        Assert.Equal(0, Enumerable.Range(0, 6).Sum(flows.GeneratorKwh));
        Assert.True(flows.Between(0, 6).UnservedKwh > 0);
        Assert.True(flows.Between(6, 12).UnservedKwh == 0);
        Assert.Equal(flows.Between(0, 6).UnservedHours, flows.Totals.UnservedHours);
    }

    [Fact]
    public void A_part_switches_itself_off_while_the_battery_is_low()
    {
        var time = Made.HoursOf(2);
        var load = LoadSeries.Of(time, new LoadPart("light", new double[] { 1, 1 }), new LoadPart("saw", new double[] { 2, 2 }) { OffBelowShare = 0.5, SheddingOrder = 1 });
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 10, StoredAtStartKwh = 7 }, Grid = GridConnection.None };
        var flows = system.Run(new Conditions(load), Control.SelfConsumption);
        Assert.Equal([3, 1], flows[FlowPath.BatteryToUse].ToArray());
        Assert.Equal([0, 2], flows.UnservedByPart()["saw"].ToArray());
        Assert.Equal([0, 0], flows.UnservedByPart()["light"].ToArray());
    }

    [Fact]
    public void A_stop_level_below_the_start_level_is_refused() =>
        Assert.Contains("it would stop as it starts", Assert.Throws<ArgumentException>(() =>
            Made.Run(s_refuge, [0], [1], new GeneratorStart { StartBelowShare = 0.5, StopAboveShare = 0.4 })).Message, StringComparison.Ordinal);

    [Fact]
    public void The_result_carries_the_cautions_of_battery_and_generator()
    {
        var finding = Made.Run(s_refuge, [0, 2], [1, 1], new GeneratorStart()).Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains(finding.Cautions, c => c.Contains("exhaust kills", StringComparison.Ordinal) && c.Contains("backfeed", StringComparison.Ordinal));
        Assert.Contains(finding.Cautions, c => c.Contains("Batteries can burn", StringComparison.Ordinal));
        Assert.Contains("that were wanted", finding.Words, StringComparison.Ordinal);
    }
}
