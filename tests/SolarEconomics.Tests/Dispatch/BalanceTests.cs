using CsCheck;

namespace SolarEconomics.Tests;

public class BalanceTests
{
    private const long Cases = 10_000;

    [Fact]
    public void Every_interval_of_every_plant_closes_and_the_battery_stays_inside_its_limits() => RandomPlant.Any.Sample(plant =>
    {
        var flows = plant.System.Run(plant.Conditions, plant.Control);
        for (var i = 0; i < flows.Time.Count; i++)
        {
            if (!(Math.Abs(flows.ResidualKwh(i)) <= 1e-9)) return false;
            if (flows.StoredKwh[i + 1] < 0 || flows.StoredKwh[i + 1] > (plant.System.Battery?.UsableKwh ?? 0)) return false;
            foreach (var path in Enum.GetValues<FlowPath>())
                if (!(flows[path][i] >= -1e-12)) return false;
        }
        return true;
    }, iter: Cases);

    [Fact]
    public void Nothing_exceeds_the_connection_the_converter_or_the_battery() => RandomPlant.Any.Sample(plant =>
    {
        var flows = plant.System.Run(plant.Conditions, plant.Control);
        var (grid, converter) = (plant.System.Grid, plant.System.Converter);
        for (var i = 0; i < flows.Time.Count; i++)
        {
            var hours = flows.Time.Hours[i];
            if (flows.ImportKwh(i) > (grid.MostImportKw * hours) + 1e-9) return false;
            if (flows.ExportKwh(i) > (Math.Min(grid.MostExportKw, plant.Conditions.MostExportKw.Span[i]) * hours) + 1e-9) return false;
            var given = flows[FlowPath.BatteryToUse][i] + flows[FlowPath.BatteryToStandby][i] + flows[FlowPath.BatteryToExport][i];
            if (given > (converter.MostToAcKw * hours) + 1e-9) return false;
        }
        return true;
    }, iter: Cases);
}
