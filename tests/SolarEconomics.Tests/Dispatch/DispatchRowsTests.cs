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
}
