namespace SolarEconomics.Tests.Tariffs;

/// <summary>A price path scales what is paid for import by one factor, what is paid for export by another and fixed charges by a third: here 2, 3 and 5.</summary>
public sealed class ScaledTariffTests
{
    private static readonly EnergyRate Rate = EnergyRate.Flat("rate", 0.10m);

    [Fact]
    public void Energy_follows_its_side_with_the_prices_of_its_blocks()
    {
        Assert.Equal([0.20m, 0.20m, 0.30m, 0.30m], new[] { EnergySide.Import, EnergySide.ControlledLoad, EnergySide.Export, EnergySide.Curtailed }.Select(side => Of(new EnergyPart("energy", side, [Rate])).Rates[0].PerKwh));
        var blocks = Of(new EnergyPart("energy", EnergySide.Import, [EnergyRate.InBlocks("rate", new RateBlocks([new RateBlock(9, 0.1m), new RateBlock(null, 0.2m)]))])).Rates[0];
        Assert.Equal([new RateBlock(9, 0.2m), new RateBlock(null, 0.4m)], blocks.Blocks!.Steps);
        var called = new EventCharge("called", [], [HourSpan.WholeDay], 1);
        Assert.Equal((2m, 3m), (Of(called).PerKwh, Of(called with { Side = EnergySide.Export }).PerKwh));
    }

    [Fact]
    public void Market_prices_are_scaled_with_what_is_added_and_their_limits()
    {
        var series = PriceSeries.Of("market", [(NodaTime.Instant.FromUtc(2024, 4, 1, 0, 0), 0.1), (NodaTime.Instant.FromUtc(2024, 4, 2, 0, 0), 0.1)]);
        var bought = Of(new SeriesPrice("spot", EnergySide.Import, series) { AddPerKwh = 0.01m, CapPerKwh = 0.5m, FloorPerKwh = 0.02m });
        Assert.Equal((2m, 0.02m, 1.0m, 0.04m), (bought.Factor, bought.AddPerKwh, bought.CapPerKwh, bought.FloorPerKwh));
        var sold = Of(new SeriesPrice("sold", EnergySide.Export, series));
        Assert.Equal((3m, 0m, null, null), (sold.Factor, sold.AddPerKwh, sold.CapPerKwh, sold.FloorPerKwh));
    }

    [Fact]
    public void Fixed_charges_sizes_and_least_bills_follow_the_third_factor()
    {
        Assert.Equal(50m, Of(new SupplyCharge("supply", 10)).Amount);
        Assert.Equal(50m, Of(new MinimumBill("minimum", 10)).Amount);
        Assert.Equal(5m, Of(new ConnectionCharge("fuse", 1, ConnectionUnit.Ampere, 25)).PerUnit);
    }

    [Fact]
    public void Demand_and_reactive_energy_follow_import_and_credits_follow_export()
    {
        var demand = Of(new DemandCharge("demand", 4, RateWindow.Always) { Steps = [new DemandStep(2, 1), new DemandStep(null, 3)] });
        Assert.Equal(8m, demand.PerKw);
        Assert.Equal([new DemandStep(2, 2), new DemandStep(null, 6)], demand.Steps);
        Assert.Equal(0.04m, Of(new ReactiveCharge("reactive", 0.02m)).PerKvarh);
        Assert.Equal(21m, Of(new CreditLimit("limit", 7, ChargePeriod.Bill, [])).Amount);
        Assert.Equal(3m, Of(new EventRebate("rebate", [], [HourSpan.WholeDay], 1)).PerKwh);
    }

    [Fact]
    public void Net_metering_and_tiers_scale_each_of_their_prices()
    {
        var net = Of(new NetMetering("net", [Rate], 4, 0.05m) { TaxFraction = 0.1m, ExpiresAfterMonths = 12 });
        Assert.Equal((0.20m, 0.15m, 4, 0.1m, 12), (net.Rates[0].PerKwh, net.CashOutPerKwh, net.SettlesInMonth, net.TaxFraction, net.ExpiresAfterMonths));
        Assert.Equal(0.20m, net.Energy.Rates[0].PerKwh);
        var tier = Of(new TieredCharge("tiers", [new BillTier(100, [new RateBlock(50, 0.1m), new RateBlock(null, 0.2m)], Fixed: 3)])).Tiers[0];
        Assert.Equal((100m, 15m), (tier.UpToKwh, tier.Fixed));
        Assert.Equal([new RateBlock(50, 0.2m), new RateBlock(null, 0.4m)], tier.Steps);
    }

    [Fact]
    public void Shares_of_other_lines_stay_shares_and_a_history_scales_every_version()
    {
        Assert.Equal(0.05m, Of(new PercentCharge("levy", 0.05m, [])).Fraction);
        var history = TariffHistory.Of(Tariff.Flat("A", "EUR", 0.1m, supplyPerDay: 1, exportPerKwh: 0.2m, from: new(2024, 1, 1)), Tariff.Flat("B", "EUR", 0.4m, from: new(2025, 1, 1))).Scaled(2, 3, 5);
        Assert.Equal([0.2m, 0.8m], history.Versions.Select(v => v.EnergyParts(EnergySide.Import).Single().Rates[0].PerKwh));
        Assert.Equal((0.6m, 5m), (history.Versions[0].EnergyParts(EnergySide.Export).Single().Rates[0].PerKwh, history.Versions[0].Parts.OfType<SupplyCharge>().Single().Amount));
    }

    private static T Of<T>(T part) where T : TariffPart => Assert.IsType<T>(part.Scaled(2, 3, 5));
}
