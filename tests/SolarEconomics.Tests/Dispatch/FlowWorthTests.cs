using System.Globalization;

namespace SolarEconomics.Tests;

public class FlowWorthTests
{
    private static readonly Currency s_euro = Currency.Of("EUR");

    private static Conditions Priced(double[] sun, double[] use, double[] buy, double[] sell) =>
        new(LoadSeries.Of(Made.HoursOf(use.Length), use)) { Arrays = [ArraySupply.Ac("roof", sun)], ImportPricePerKwh = buy, ExportPricePerKwh = sell };

    [Fact]
    public void Each_kWh_is_worth_what_it_stood_in_for_at_its_hour()
    {
        var flows = new EnergySystem { Battery = new Battery { UsableKwh = 2 } }.Run(Priced([4, 0], [1, 3], [0.2, 0.4], [0.05, 0.1]), Control.SelfConsumption);
        var worth = flows.Worth(s_euro, wearPerKwh: 0.03);
        decimal Of(FlowPath path) => worth.Destinations.Single(d => d.Path == path).Worth.Amount;
        // By hand: 1 kWh used at 0.20; 2 stored and used at 0.40; 1 exported at 0.05; 1 bought at 0.40; 2 kWh of export forgone at 0.05; wear 2 × 0.03.
        Assert.Equal((0.2m, 0.8m, 0.05m, -0.4m), (Of(FlowPath.ArrayToUse), Of(FlowPath.BatteryToUse), Of(FlowPath.ArrayToExport), Of(FlowPath.GridToUse)));
        Assert.Equal((0.1m, 0.06m, 0.64m), (worth.Charging.Amount, worth.Wear.Amount, worth.StorageGain.Amount));
        Assert.Equal(0.08, worth.StorageCostPerKwh, 12);
    }

    [Fact]
    public void The_gain_of_a_battery_is_the_difference_of_two_runs()
    {
        var random = new Random(7);
        double[] Draw(double most) => [.. Enumerable.Range(0, 500).Select(_ => random.NextDouble() * most)];
        var conditions = Priced(Draw(5), Draw(3), Draw(0.5), Draw(0.1));
        double Bill(EnergyFlows f) => Enumerable.Range(0, 500).Sum(i => (f.ImportKwh(i) * conditions.ImportPricePerKwh.Span[i]) - (f.ExportKwh(i) * conditions.ExportPricePerKwh.Span[i]));
        var with = new EnergySystem { Battery = Battery.Of(6, 0.85, 2) with { StandbyW = 100 }, Converter = new Converter { ToAc = 0.95, ToDc = 0.96 } }.Run(conditions, Control.SelfConsumption);
        var without = new EnergySystem().Run(conditions, Control.SelfConsumption);
        Assert.Equal(Bill(without) - Bill(with), (double)with.Worth(s_euro).StorageGain.Amount, 5e-7);
    }

    [Fact]
    public void What_would_have_been_curtailed_costs_nothing_to_store()
    {
        var system = new EnergySystem { Battery = new Battery { UsableKwh = 2 }, Grid = new GridConnection { MostExportKw = 1 } };
        var worth = system.Run(Priced([4, 0], [1, 3], [0.2, 0.4], [0.05, 0.1]), Control.SelfConsumption).Worth(s_euro);
        Assert.Equal(0, worth.Charging.Amount);
    }

    [Fact]
    public void Without_any_price_the_worth_is_refused_in_words() =>
        Assert.Contains("Give the conditions a tariff", Assert.Throws<InvalidOperationException>(() => Made.Run(new EnergySystem(), [1], [1]).Worth(s_euro)).Message, StringComparison.Ordinal);

    [Fact]
    public void The_words_carry_figures_and_the_cautions_of_money_and_batteries()
    {
        var flows = new EnergySystem { Battery = new Battery { UsableKwh = 2 } }.Run(Priced([4, 0], [1, 3], [0.2, 0.4], [0.05, 0.1]), Control.SelfConsumption);
        var finding = flows.Worth(s_euro).Say(CultureInfo.InvariantCulture);
        Assert.Equal("€1", finding.Figure);
        Assert.Contains("A kWh from the battery cost €0.05", finding.Words, StringComparison.Ordinal);
        Assert.Equal(2, finding.Cautions.Count);
        Assert.Contains("75.0 %", flows.Say(CultureInfo.InvariantCulture).Figure, StringComparison.Ordinal);
    }
}
