using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Published rows, each put through the flow model itself and not through its formula.</summary>
public class DispatchRowsTests
{
    [Theory, PublishedRows("round-trip")]
    public void A_round_trip_splits_into_two_equal_ways(string id) => Published.Check(id, row =>
    {
        var battery = Battery.Of(200, row.Number("round trip"));
        var inKwh = row.Number("in");
        var flows = Made.Run(new EnergySystem { Battery = battery }, sunKwh: [inKwh, 0], useKwh: [0, 1000]);
        return row.Text("give") switch
        {
            "out" => flows[FlowPath.BatteryToUse][1],
            "stored" => flows.StoredKwh[1],
            _ => battery.ChargeEfficiency,
        };
    });

    [Theory, PublishedRows("greedy-dispatch")]
    public void Six_hours_of_self_consumption_go_as_worked_by_hand(string id) => Published.Check(id, row =>
    {
        var battery = Battery.Of(row.Number("kwh"), row.Number("round trip"), row.Number("kw"));
        var flows = Made.Run(new EnergySystem { Battery = battery }, row.Numbers("pv"), row.Numbers("load"));
        var hours = Enumerable.Range(0, flows.Time.Count);
        return row.Text("give") switch
        {
            "stored" => flows.StoredKwh[row.Whole("hour")],
            "import" => hours.Sum(flows.ImportKwh),
            _ => hours.Sum(flows.ExportKwh),
        };
    });

    [Theory, PublishedRows("stored-path")]
    public void A_stored_path_multiplies_its_efficiencies(string id) => Published.Check(id, row =>
    {
        var isDc = row.Text("coupling") == "dc";
        var system = new EnergySystem
        {
            Battery = Battery.Of(100, row.Number("battery")),
            Converter = new Converter { ToDc = row.Number("charging"), ToAc = row.Number("discharging") },
        };
        var array = new ArraySupply("roof", isDc ? Coupling.Dc : Coupling.Ac, new double[] { 1, 0 }) { Efficiency = row.Number("inverter") };
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(2), new double[] { 0, 100 })) { Arrays = [array] };
        return system.Run(conditions, Control.SelfConsumption)[FlowPath.BatteryToUse][1];
    });

    [Theory, PublishedRows("fuel-line")]
    public void Fuel_per_kWh_falls_with_load(string id) => Published.Check(id, row =>
        new FuelLine(row.Number("idle"), row.Number("slope")).LitresPerKwhAt(row.Number("rated"), row.Number("output")));

    [Theory, PublishedRows("peukert")]
    public void A_fast_discharge_gives_less(string id) => Published.Check(id, row =>
    {
        var bank = new LeadAcid(row.Number("ah"), row.Number("hours"), 12) { Exponent = row.Number("k") };
        return row.Text("give") == "hours" ? bank.HoursAt(row.Number("amps")) : bank.AmpHoursAt(row.Number("amps"));
    });

    [Theory, PublishedRows("battery-cycle")]
    public void A_full_cycle_is_worth_what_it_avoids_less_what_it_forgoes(string id) => Published.Check(id, row => Cycle(row));

    [Theory, PublishedRows("battery-cycle-zero")]
    public void At_one_round_trip_a_cycle_earns_nothing(string id) => Published.Check(id, row => Cycle(row));

    [Theory, PublishedRows("battery-wear")]
    public void Wear_is_the_cost_of_bringing_replacement_forward(string id) => Published.Check(id, row =>
    {
        var wear = new BatteryWear(row.Number("price"), row.Number("calendar"), row.Number("life"), row.Numbers("year").Sum());
        return row.Text("give") == "average" ? wear.AveragePerKwh : wear.MarginalPerKwh;
    });

    [Theory, PublishedRows("stored-year")]
    public void Standby_takes_a_quarter_of_what_a_year_of_storing_gives(string id) => Published.Check(id, row =>
    {
        const int Hours = 8760;
        var dayKwh = row.Number("in") / 365;
        var system = new EnergySystem
        {
            Battery = Battery.Of(50, row.Number("battery")) with { StandbyW = row.Number("standby") },
            Converter = new Converter { ToDc = row.Number("charging"), ToAc = row.Number("discharging") },
        };
        // Each day one hour of sun goes whole into the battery; the standby of that hour stands in the sun too, and 24 hours of use empty the battery.
        var standbyKwh = row.Number("standby") / 1000;
        var sun = Enumerable.Range(0, Hours).Select(i => i % 24 == 12 ? dayKwh + standbyKwh : 0).ToArray();
        var use = Enumerable.Range(0, Hours).Select(i => i % 24 == 12 ? 0 : 1.0).ToArray();
        var totals = Made.Run(system, sun, use).Totals;
        var delivered = totals[FlowPath.BatteryToUse] + totals[FlowPath.BatteryToStandby];
        return row.Text("give") switch
        {
            "delivered" => delivered,
            "net" => delivered - totals.StandbyKwh,
            _ => (delivered - totals.StandbyKwh) / totals[FlowPath.ArrayToBattery],
        };
    });

    private static double Cycle(PublishedRow row)
    {
        var battery = Battery.Of(row.Number("kwh"), row.Number("round trip"));
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(2), new double[] { 0, 100 }))
        {
            Arrays = [ArraySupply.Ac("roof", new double[] { 100, 0 })],
            ImportPricePerKwh = new[] { row.Number("buy"), row.Number("buy") },
            ExportPricePerKwh = new[] { row.Number("sell"), row.Number("sell") },
        };
        var flows = new EnergySystem { Battery = battery }.Run(conditions, Control.SelfConsumption);
        return row.Text("give") switch
        {
            "charged" => flows.Totals[FlowPath.ArrayToBattery],
            "delivered" => flows.Totals[FlowPath.BatteryToUse],
            _ => (double)flows.Worth(Currency.Of("EUR")).StorageGain.Amount,
        };
    }
}
