namespace SolarEconomics.Tests.Tariffs;

public sealed class PublishedBillTests
{
    [Theory, PublishedRows("block bill")]
    public void A_bill_in_blocks_agrees_to_the_cent(string id) => Published.Check(id, row =>
    {
        var tariff = OneBill.Empty()
            .With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", OneBill.Blocks(row, "ends"))]))
            .ImportOnTop("power cost", Number(row, "ontop"))
            .With(new SupplyCharge("base", Number(row, "base"), ChargePeriod.Bill))
            .Taxed(Number(row, "tax"));
        return OneBill.Want(OneBill.Of(tariff, row.Number("kwh")), row.Text("want"));
    });

    [Theory, PublishedRows("bill with losses")]
    public void A_bill_with_losses_agrees(string id) => Published.Check(id, row =>
    {
        var with = 1 + Number(row, "losses");
        var tariff = OneBill.Empty("CAD")
            .With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", OneBill.Blocks(row, "ends"))]))
            .ImportOnTop("variable", Number(row, "variable"))
            .With(OnTop("transmission", Number(row, "transmission")) with { QuantityFactor = with, QuantityDigits = 0 })
            .With(OnTop("losses", Number(row, "lossprice")) with { QuantityFactor = Number(row, "losses") })
            .With(OnTop("wholesale", Number(row, "wholesale")) with { QuantityFactor = with, QuantityDigits = 0 });
        return OneBill.Want(OneBill.Of(tariff, row.Number("kwh"), row.Whole("days")), row.Text("want"));
    });

    [Theory, PublishedRows("flat bill")]
    public void A_flat_bill_agrees(string id) => Published.Check(id, row =>
        OneBill.Of(OneBill.Empty().Import("energy", Number(row, "price")).With(new SupplyCharge("meter", Number(row, "fixed"), ChargePeriod.Bill)),
            row.Number("kwh")).Total.Amount);

    [Theory, PublishedRows("two-rate bill")]
    public void A_bill_of_two_rates_agrees_before_and_after_use_is_shifted(string id) => Published.Check(id, row =>
    {
        var tariff = OneBill.Empty().With(new SupplyCharge("fixed", Number(row, "fixed"), ChargePeriod.Bill));
        tariff = row.Text("shifted") == "none" ? tariff.Import("standard", Number(row, "standard"))
            : tariff.Import("on-peak", Number(row, "peak"), hours: "09:00-21:00").Import("off-peak", Number(row, "offpeak"));
        var share = row.Number("share") - (row.Text("shifted") == "none" ? 0 : row.Number("shifted"));
        // Half of the day is on-peak, so a share of one half is the even spread.
        return OneBill.Of(tariff, i => row.Number("kwh") * 2 * (i is >= 18 and < 42 ? share : 1 - share)).Total.Amount;
    });

    [Theory, PublishedRows("scaled blocks")]
    public void Blocks_stated_for_thirty_days_grow_with_the_days_of_the_bill(string id) => Published.Check(id, row =>
    {
        var blocks = OneBill.Blocks(row, "ends", BlockPeriod.ThirtyDays);
        var tariff = OneBill.Empty("LKR").With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)]))
            .With(new PercentCharge("surcharge", Number(row, "surcharge"), ["import"]));
        var bill = OneBill.Of(tariff, row.Number("units"), row.Whole("days"));
        // The source prints the surcharge within each line; here it is a line of its own.
        return row.Text("want") == "total" ? bill.Total.Amount : OneBill.Want(bill, row.Text("want")) * (1 + Number(row, "surcharge"));
    });

    [Theory, PublishedRows("whole-band bill")]
    public void A_whole_band_bill_jumps_at_the_edge(string id) => Published.Check(id, row => OneBill.Of(OneBill.Empty("INR").With(new TieredCharge("energy",
    [
        new BillTier(100, [new RateBlock(null, 1.00m)], 20),
        new BillTier(200, [new RateBlock(null, 1.50m)], 20),
        new BillTier(500, [new RateBlock(200, 2.00m), new RateBlock(null, 3.00m)], 30),
        new BillTier(null, [new RateBlock(200, 3.00m), new RateBlock(500, 4.00m), new RateBlock(null, 5.75m)], 40),
    ])), row.Number("units")).Total.Amount);

    [Theory, PublishedRows("supply charge in force")]
    public void A_supply_charge_after_tax_and_discount_agrees(string id) => Published.Check(id, row =>
    {
        var net = OneBill.Empty("AUD").SupplyPerDay(Number(row, "supply")).SupplyPerDay(-Number(row, "less"), "less").Import("usage", 0m)
            .Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere);
        var discount = new PercentCharge("pay on time", -Number(row, "discount"), ["supply charge", "less"]);
        var days = row.Whole("days");
        return row.Text("want") switch
        {
            "net cents a day" => OneBill.Of(net, row.Number("kwh"), days).Total.Amount / days * 100,
            "cents a day" => OneBill.Of(net.With(discount).Taxed(Number(row, "tax")), row.Number("kwh"), days).Total.Amount / days * 100,
            _ => OneBill.Of(net, row.Number("kwh"), days).Lines.Single(l => l.Unit == "kWh").Quantity / days,
        };
    });

    [Theory, PublishedRows("billing demand")]
    public void Billing_demand_is_the_highest_of_three(string id) => Published.Check(id, row => DemandCharge.BilledKw(
        Number(row, "kw"), Number(row, "kva"), Number(row, "kvashare"), Number(row, "winterkw"), Number(row, "wintershare")));

    [Theory, PublishedRows("first block by days")]
    public void A_first_block_grows_with_the_days_of_the_bill(string id) => Published.Check(id, row =>
    {
        var blocks = OneBill.Blocks(row, "first", BlockPeriod.ThirtyDays);
        var bill = OneBill.Of(OneBill.Empty("CAD").With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)])),
            row.Number("kwh"), row.Whole("days"));
        return row.Text("want") == "total" ? bill.Total.Amount : bill.Lines[0].Quantity;
    });

    [Theory, PublishedRows("bill from a counter")]
    public void Two_readings_of_a_counter_make_a_bill(string id) => Published.Check(id, row => OneBill.Want(
        OneBill.Of(OneBill.Empty().Import("energy", Number(row, "price")).With(new SupplyCharge("availability", Number(row, "fixed"), ChargePeriod.Bill)),
            row.Number("after") - row.Number("before")), row.Text("want") == "quantity" ? "quantity 1" : row.Text("want")));

    [Theory, PublishedRows("untaxed export")]
    public void Tax_is_on_the_charges_and_not_on_the_credit_for_export(string id) => Published.Check(id, row => OneBill.Want(
        OneBill.Of(Tariff.Flat("Published", "AUD", Number(row, "price"), Number(row, "supply"), Number(row, "feedin"), Number(row, "tax")),
            row.Number("kwh"), row.Whole("days"), row.Number("export")), row.Text("want")));

    [Theory, PublishedRows("shown shares")]
    public void Shares_are_rounded_for_display_only(string id) => Published.Check(id, row =>
    {
        var shares = row.Numbers("shares");
        var tariff = OneBill.Empty("CAD").Import("on", 0.132m, hours: "00:00-08:00").Import("mid", 0.094m, hours: "08:00-16:00").Import("off", 0.065m);
        var kwh = row.Number("kwh");
        double At(int i) => kwh * 3 * shares[i / 16];
        var lines = OneBill.Of(tariff, At).Lines;
        var losses = OneBill.Of(tariff with { Parts = [((EnergyPart)tariff.Parts[0]) with { QuantityFactor = Number(row, "losses") }] }, At).Lines;
        static decimal Shown(BillLine line) => Math.Round(line.Quantity, 0, MidpointRounding.AwayFromZero);
        return row.Text("want") switch
        {
            "sum of shown" => lines.Sum(Shown),
            "sum of quantities" => lines.Sum(l => l.Quantity),
            "sum of losses shown" => losses.Sum(Shown),
            var want when want.StartsWith("loss") => Shown(losses[want[^1] - '1']),
            var want => Shown(lines[want[^1] - '1']),
        };
    });

    private static EnergyPart OnTop(string name, decimal perKwh) => new(name, EnergySide.Import, [EnergyRate.Flat(name, perKwh)]);

    private static decimal Number(PublishedRow row, string name) => (decimal)row.Number(name);
}
