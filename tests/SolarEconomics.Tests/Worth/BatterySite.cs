using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>A year of like days with a battery: 3 kWh made at noon, 1 of it stored and 2 exported; what was stored is delivered at six in the evening.</summary>
internal static class BatterySite
{
    internal static readonly LocalDate First = new(2023, 1, 1);

    /// <summary>Import 0.30, export 0.10.</summary>
    internal static WorthToDate Worth(Func<int, double>? storedOnDay = null)
    {
        var stored = storedOnDay ?? (_ => 1);
        var roof = new Device("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 2, InService = First };
        var site = Site.At("a year with a battery", latitude: 0, longitude: 0, zone: "UTC", currency: "EUR") with { Plant = new Plant([roof]) };
        var readings = new Readings(
        [
            Hours("roof", FlowKind.Generation, 12, _ => 3), Hours("export", FlowKind.Export, 12, d => 3 - stored(d)), Hours("import", FlowKind.Import, 20, _ => 1),
            Hours("charge", FlowKind.BatteryCharge, 12, stored), Hours("discharge", FlowKind.BatteryDischarge, 18, stored),
        ], [], []);
        var tariffs = TariffHistory.Of(Tariff.Flat("flat", "EUR", 0.30m, exportPerKwh: 0.10m, from: new LocalDate(2020, 1, 1)));
        return SolarEconomics.Worth.ToDate(site, readings, tariffs, Ledger.From([new LedgerEntry(First, LedgerKind.Purchase, Money.Nominal(1_000m, Currency.Of("EUR")))]), new WorthOptions());
    }

    private static Channel Hours(string name, FlowKind flow, int hour, Func<int, double> kwh)
    {
        var start = First.AtMidnight().InUtc().ToInstant();
        var starts = Enumerable.Range(0, 365 * 24).Select(h => start + Duration.FromHours(h)).ToArray();
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))],
            [.. Enumerable.Range(0, 365 * 24).Select(h => h % 24 == hour ? kwh(h / 24) : 0)], new Quality[365 * 24])
        {
            Device = flow == FlowKind.Generation ? name : null,
        };
    }
}
