using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>One winter-time day of hours in a zone without clock changes, small enough to work out by hand.</summary>
internal static class SmallSite
{
    internal static readonly LocalDate Day = new(2024, 6, 3);

    internal static Site Site(params Device[] devices) =>
        SolarEconomics.Site.At("a small site", latitude: 0, longitude: 0, zone: "UTC", currency: "EUR") with { Plant = new Plant(devices) };

    internal static TariffHistory Flat(decimal import, decimal export, decimal tax = 0) =>
        TariffHistory.Of(Tariff.Flat("flat", "EUR", import, supplyPerDay: 0.50m, exportPerKwh: export, tax: tax, from: new LocalDate(2020, 1, 1)));

    /// <summary>A channel of 24 hours: zero but for the hours given; NaN marks a missing reading.</summary>
    internal static Channel Hours(string name, FlowKind flow, params (int Hour, double Kwh)[] hours)
    {
        var start = Day.AtMidnight().InUtc().ToInstant();
        var starts = Enumerable.Range(0, 24).Select(h => start + Duration.FromHours(h)).ToArray();
        var kwh = new double[24];
        var quality = new Quality[24];
        foreach (var (hour, value) in hours)
        {
            kwh[hour] = double.IsNaN(value) ? 0 : value;
            if (double.IsNaN(value)) quality[hour] = Quality.Missing;
        }
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], kwh, quality) { Device = flow == FlowKind.Generation ? name : null };
    }

    internal static Readings Of(params Channel[] channels) => new(channels, [], []);
}
