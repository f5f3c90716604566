using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>An invented home of fourteen months in which no two days are alike: two roofs, a battery, gaps, two tariffs, receipts of most kinds. For results held word for word.</summary>
internal static class MixedSite
{
    internal static readonly LocalDate First = new(2022, 11, 1);
    private const int Days = 425;
    private static readonly Currency s_euro = Currency.Of("EUR");

    internal static Site Place { get; } = Site.At("a mixed home", latitude: 48, longitude: 11, zone: "UTC", currency: "EUR") with
    {
        Plant = new Plant(
        [
            new Device("south", MeasurementPoint.InverterAcOut) { RatedKwp = 3, InService = First, StandbyW = 8 },
            new Device("shed", MeasurementPoint.InverterAcOut) { RatedKwp = 1, InService = new LocalDate(2023, 4, 10) },
        ]),
        TaxReclaimedShare = 0.25,
    };

    internal static TariffHistory Tariffs { get; } = TariffHistory.Of(
        Tariff.Named("old", "EUR", new LocalDate(2020, 1, 1)).SupplyPerDay(0.40m).Import("any hour", 0.27m).Export("export", 0.11m).Taxed(0.19m),
        Tariff.Named("new", "EUR", new LocalDate(2023, 6, 15)).SupplyPerDay(0.45m).Import("peak", 0.39m, "17:00-21:00").Import("other", 0.31m).Export("export", 0.08m).Taxed(0.19m));

    /// <summary>Receipts of most kinds, before, in and after the records.</summary>
    internal static Ledger Receipts { get; } = Ledger.From(
    [
        Entry(First, LedgerKind.Purchase, 2_900) with { Device = "south", OwnHours = 6 }, Entry(new(2023, 4, 10), LedgerKind.Purchase, 640) with { Device = "shed" },
        Entry(new(2022, 12, 5), LedgerKind.Grant, 300), Entry(new(2023, 2, 1), LedgerKind.Insurance, 35), Entry(new(2023, 7, 9), LedgerKind.Repair, 60) with { Device = "south", OwnHours = 2.5 },
        Entry(new(2023, 7, 12), LedgerKind.Part, 18.5m) with { Device = "south" }, Entry(new(2023, 8, 1), LedgerKind.WarrantyRefused, 0) with { Device = "south" },
        Entry(new(2023, 9, 1), LedgerKind.Sale, 45) with { Device = "shed" }, Entry(new(2023, 10, 1), LedgerKind.Certificate, 22), Entry(new(2023, 10, 2), LedgerKind.OwnHours, 0) with { OwnHours = 3 },
    ]);

    internal static Readings Records(bool battery = true, bool gaps = true)
    {
        var made = new double[2][];
        made[0] = [.. Hours().Select(h => h.Hour is >= 8 and < 17 ? Sun(h.Day) * (4.5 - Math.Abs(12.5 - h.Hour)) * 0.42 : 0)];
        made[1] = [.. Hours().Select(h => h.Day >= 160 && h.Hour is >= 10 and < 16 ? Sun(h.Day) * 0.5 : 0)];
        var use = Hours().Select(h => 0.25 + (h.Hour is >= 18 and < 22 ? 0.7 : 0) + (0.02 * (h.Day % 5))).ToArray();
        var (import, export, charge, discharge) = (new double[use.Length], new double[use.Length], new double[use.Length], new double[use.Length]);
        var stored = 0.0;
        for (var i = 0; i < use.Length; i++)
        {
            var net = made[0][i] + made[1][i] - use[i];
            if (battery && net > 0) charge[i] = Math.Min(net, (4 - stored) / 0.95);
            if (battery && net < 0) discharge[i] = Math.Min(-net, stored * 0.95);
            stored += (charge[i] * 0.95) - (discharge[i] / 0.95);
            net -= charge[i] - discharge[i];
            (import[i], export[i]) = (Math.Max(0, -net), Math.Max(0, net));
        }
        List<Channel> channels =
        [
            Channel("south", FlowKind.Generation, made[0], gaps ? [900, 901, 5000] : []), Channel("shed", FlowKind.Generation, made[1], []),
            Channel("import", FlowKind.Import, import, gaps ? [2_000] : []), Channel("export", FlowKind.Export, export, gaps ? [2_500, 2_501] : []),
        ];
        if (battery) channels.AddRange([Channel("charge", FlowKind.BatteryCharge, charge, []), Channel("discharge", FlowKind.BatteryDischarge, discharge, [])]);
        return new Readings(channels, [], []);
    }

    internal static WorthToDate Worth(bool battery = true, bool gaps = true) => SolarEconomics.Worth.ToDate(Place, Records(battery, gaps), Tariffs, Receipts,
        new WorthOptions { ResaleToday = Money.Nominal(1_500, s_euro) });

    internal static LedgerEntry Entry(LocalDate on, LedgerKind kind, decimal amount) => new(on, kind, Money.Nominal(amount, s_euro));

    /// <summary>More in summer than in winter, and a cloudy day now and then.</summary>
    private static double Sun(int day) => (0.55 - (0.4 * Math.Cos((day - 50) * 2 * Math.PI / 365))) * (day % 6 == 2 ? 0.3 : 1);

    private static IEnumerable<(int Day, int Hour)> Hours() => Enumerable.Range(0, Days * 24).Select(h => (h / 24, h % 24));

    private static Channel Channel(string name, FlowKind flow, double[] kwh, int[] missing)
    {
        var start = First.AtMidnight().InUtc().ToInstant();
        Instant[] starts = [.. Enumerable.Range(0, kwh.Length).Select(h => start + Duration.FromHours(h))];
        var quality = new Quality[kwh.Length];
        var known = kwh.ToArray();
        foreach (var i in missing) (quality[i], known[i]) = (Quality.Missing, 0);
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], known, quality) { Device = flow == FlowKind.Generation ? name : null };
    }
}
