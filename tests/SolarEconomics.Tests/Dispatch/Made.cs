using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Small plants and time lines for tests of the flow model.</summary>
internal static class Made
{
    internal static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];

    internal static Timeline HoursOf(int count, double hours = 1) =>
        Timeline.Of(new IntervalGrid(Instant.FromUtc(2025, 1, 1, 0, 0), Duration.FromHours(hours), count), Dublin);

    internal static EnergyFlows Run(EnergySystem system, double[] sunKwh, double[] useKwh, Control? control = null) =>
        system.Run(new Conditions(LoadSeries.Of(HoursOf(useKwh.Length), useKwh)) { Arrays = [ArraySupply.Ac("roof", sunKwh)] }, control ?? Control.SelfConsumption);

    internal static double Sum(this EnergyFlows flows, FlowPath path)
    {
        var sum = 0.0;
        foreach (var kwh in flows[path]) sum += kwh;
        return sum;
    }
}
