using NodaTime;

namespace SolarEconomics.Tests;

public class PublishedWorthTests
{
    [Theory, PublishedRows("bridge example")]
    public void A_part_in_an_order_agrees_with_the_worked_example(string id) =>
        Published.Check(id, row => BridgeExample.Runs.Parts([.. row.Numbers("order").Select(n => (int)n)])[row.Whole("give")]);

    [Theory, PublishedRows("bridge average")]
    public void The_average_over_all_orders_agrees_with_the_worked_example(string id) =>
        Published.Check(id, row => BridgeExample.Runs.Shapley(row.Whole("give")));

    [Theory, PublishedRows("pace of payback")]
    public void Dates_and_open_balances_agree_with_the_worked_example(string id) => Published.Check(id, row =>
    {
        var (cost, straight, yearly) = (Eur(row.Number("cost")), Eur(row.Number("straight")), Eur(row.Number("yearly")));
        return row.Text("give") == "open" ? (double)PaceOfPayback.Open(cost, straight, yearly).Amount : PaceOfPayback.Years(cost, yearly)!.Value;
    });

    [Theory, PublishedRows("pace state")]
    public void A_pace_below_zero_never_pays_back(string id) =>
        Published.Check(id, row => PaceOfPayback.Years(Eur(row.Number("cost")), Eur(row.Number("yearly"))) is null ? "never" : "some day");

    [Theory, PublishedRows("self-consumption")]
    public void Self_consumption_agrees(string id) => Published.Check(id, row =>
    {
        var grid = new IntervalGrid(Instant.FromUtc(2024, 6, 1, 0, 0), Duration.FromHours(1), 1);
        var (pv, load, direct) = (row.Number("pv"), row.Number("load"), row.Number("direct"));
        var went = Destinations.Of(new EnergySet(grid, [pv], [load - direct], [pv - direct], [0], [0], [0]));
        var totals = new EnergyTotals(pv, went.UsedDirectlyKwh[0], went.UsedFromStorageKwh[0], went.ExportedKwh[0], went.LostKwh[0], load - direct, 0);
        return row.Text("give") == "share" ? totals.SelfConsumption!.Value : totals.ExportedKwh;
    });

    private static Money Eur(double amount) => Money.Nominal((decimal)amount, Currency.Of("EUR"));
}
