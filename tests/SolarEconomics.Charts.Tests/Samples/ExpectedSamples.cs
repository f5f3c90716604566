using NodaTime;

namespace SolarEconomics.Charts.Tests;

/// <summary>Two places under the same clouds, made up for the tests: one lost a string of three for twelve days.</summary>
internal static class ExpectedSamples
{
    private const int Count = 150;
    private static readonly Instant First = Instant.FromUtc(2024, 3, 1, 0, 0);

    internal static ExpectedAgainstMeasured StringLost() => Of(i => i is >= 80 and < 92 ? 2.0 / 3 : 1);

    internal static ExpectedAgainstMeasured NothingLost() => Of(_ => 1);

    private static ExpectedAgainstMeasured Of(Func<int, double> share)
    {
        var module = new ModuleType("module", 400);
        var plant = new Plant(
        [
            new Device("barn", MeasurementPoint.InverterAcOut) { InService = new(2024, 3, 1), Inverter = new InverterType("8 kW", 8000) },
            new Device("shed", MeasurementPoint.InverterAcOut) { InService = new(2024, 3, 1), Inverter = new InverterType("3 kW", 3000) },
        ]).With(
            new Placement(new ModuleArray("barn modules", module, 7, 3, new Plane(30, 180)), "barn") { From = new(2024, 3, 1) },
            new Placement(new ModuleArray("shed modules", module, 8, 1, new Plane(20, 220)), "shed") { From = new(2024, 3, 1) });
        var site = Site.At("Made up", 47, 8, "UTC", "CHF") with { Plant = plant };
        var readings = new Readings([Channel("barn", i => Sun(i) * 8.4 * (1 + Wobble(i, 7) * 0.04) * share(i)), Channel("shed", i => Sun(i) * 3.2)], [], []);
        return ExpectedAgainstMeasured.Of(site, readings, "barn");
    }

    private static double Sun(int day) => 1.2 + (3.3 * (0.5 + (Wobble(day, 13) * 0.5)));

    /// <summary>From −1 to 1, the same on every machine.</summary>
    private static double Wobble(int day, int seed) => (((day * day * 31) + (day * 17) + (seed * 47)) % 101 / 50.0) - 1;

    private static Channel Channel(string device, Func<int, double> kwh) => new(
        "generation " + device, FlowKind.Generation,
        [.. Enumerable.Range(0, Count).Select(i => First + Duration.FromDays(i))],
        [.. Enumerable.Range(1, Count).Select(i => First + Duration.FromDays(i))],
        [.. Enumerable.Range(0, Count).Select(kwh)],
        new Quality[Count]) { Device = device };
}
