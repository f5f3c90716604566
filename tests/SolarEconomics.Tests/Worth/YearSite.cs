using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>A year of days that are all alike: 2 kWh made at noon, 1 used and 1 exported; 1 kWh bought in the evening. Easy to draw on by hand.</summary>
internal static class YearSite
{
    internal static readonly LocalDate First = new(2023, 1, 1);

    internal static WorthToDate Worth(decimal cost = 1_000m, params LedgerEntry[] more) => Worth(cost, null, more);

    internal static WorthToDate Worth(decimal cost, decimal? resaleToday, params LedgerEntry[] more)
    {
        var ledger = Paid(cost, more);
        return SolarEconomics.Worth.ToDate(Place, Records(), Tariffs, ledger, new WorthOptions { ResaleToday = resaleToday is { } amount ? Money.Nominal(amount, ledger.Currency) : null });
    }

    internal static Site Place { get; } = Site.At("a year", latitude: 0, longitude: 0, zone: "UTC", currency: "EUR") with
    {
        Plant = new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 2, InService = First }]),
    };

    internal static TariffHistory Tariffs { get; } = TariffHistory.Of(Tariff.Flat("flat", "EUR", 0.30m, exportPerKwh: 0.10m, from: new LocalDate(2020, 1, 1)));

    internal static Readings Records() => new([Daily("roof", FlowKind.Generation, 12, 2), Daily("export", FlowKind.Export, 12, 1), Daily("import", FlowKind.Import, 20, 1)], [], []);

    internal static Ledger Paid(decimal cost, params LedgerEntry[] more) => Ledger.From([new LedgerEntry(First, LedgerKind.Purchase, Money.Nominal(cost, Currency.Of("EUR"))), .. more]);

    /// <summary>No growth, no ageing, no discount: the straight future.</summary>
    internal static Assumptions Plain => new() { Years = 20, PriceGrowth = 0, CostGrowth = 0, DiscountRate = 0, Ageing = Ageing.None };

    private static Channel Daily(string name, FlowKind flow, int hour, double kwh)
    {
        var start = First.AtMidnight().InUtc().ToInstant();
        var starts = Enumerable.Range(0, 365 * 24).Select(h => start + Duration.FromHours(h)).ToArray();
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))],
            [.. Enumerable.Range(0, 365 * 24).Select(h => h % 24 == hour ? kwh : 0)], new Quality[365 * 24])
        {
            Device = flow == FlowKind.Generation ? name : null,
        };
    }
}
