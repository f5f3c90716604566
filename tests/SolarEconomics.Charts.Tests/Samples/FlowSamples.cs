using NodaTime;

namespace SolarEconomics.Charts.Tests;

/// <summary>Flows made up for the tests: a year of hours with sun and use of plain sines, so that the figures are the same everywhere.</summary>
internal static class FlowSamples
{
    private static readonly DateTimeZone s_dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];

    /// <summary>A home with a battery and an export limit.</summary>
    internal static EnergyFlows Home() => Run(new EnergySystem { Battery = Battery.Of(8, 0.9, 3) with { StandbyW = 8 }, Grid = new GridConnection { MostExportKw = 2 } }, Control.SelfConsumption);

    /// <summary>An island with a generator.</summary>
    internal static EnergyFlows Island() => Run(new EnergySystem
    {
        Battery = Battery.Of(8, 0.8, 3), Grid = GridConnection.None, Generator = new Generator(1.5, new FuelLine(0.1, 0.3)) { QuietHours = [HourSpan.Parse("22:00-07:00")] },
    }, new GeneratorStart());

    private static EnergyFlows Run(EnergySystem system, Control control)
    {
        var time = Timeline.Year(2025, Duration.FromHours(1), s_dublin);
        var (sun, use) = (new double[time.Count], new double[time.Count]);
        for (var i = 0; i < time.Count; i++)
        {
            var (day, hour) = (i / 24, i % 24);
            sun[i] = Math.Max(0, Math.Sin(Math.PI * (hour - 6) / 12.0)) * (2.4 - 1.8 * Math.Cos(2 * Math.PI * day / 365)) * (day % 3 == 0 ? 0.4 : 1);
            use[i] = 0.25 + (hour is >= 17 and < 22 ? 0.9 : 0) + 0.1 * Math.Cos(2 * Math.PI * day / 365);
        }
        return system.Run(new Conditions(LoadSeries.Of(time, use)) { Arrays = [ArraySupply.Ac("roof", sun)] }, control);
    }
}
