using System.Globalization;
using System.Text;

namespace SolarEconomics.Tests;

public sealed class DoubtsTests : IDisposable
{
    private static readonly Site Mill = Site.At("Test mill", 53, -9, "UTC", "EUR") with
    {
        Plant = new Plant([new Device("south roof", MeasurementPoint.InverterAcOut) { RatedKwp = 4 }]),
    };

    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private Readings Read(string header, Func<int, string> value)
    {
        var text = new StringBuilder("start," + header + "\n");
        for (var i = 0; i < 96; i++) text.Append(CultureInfo.InvariantCulture, $"2024-06-{1 + (i / 48):00} {i / 2 % 24:00}:{i % 2 * 30:00},{value(i)}\n");
        return Readings.Load(_files.Write("meter.csv", text.ToString()), Mill);
    }

    [Fact]
    public void More_than_the_array_can_make_is_doubtful_and_counted()
    {
        var readings = Read("generation south roof (kWh)", i => i == 20 ? "2.6" : "1");
        Assert.Equal(97.6, readings.Channels[0].Total.Kwh, 9);
        Assert.Equal(Quality.Doubtful, readings.Channels[0].Quality[20]);
        Assert.Contains("above what 4 kWp can make", Assert.Single(readings.Problems).Found);
    }

    [Fact]
    public void A_value_that_hangs_for_half_a_day_is_doubtful()
    {
        var readings = Read("import (kWh)", i => i is >= 10 and < 40 ? "0.237" : (i * 0.01).ToString(CultureInfo.InvariantCulture));
        Assert.Equal(30, readings.Channels[0].Quality.ToArray().Count(q => q.HasFlag(Quality.Doubtful)));
        Assert.Contains("the same 0.237 kWh under \"import\" for 15 hours", Assert.Single(readings.Problems).Found);
    }

    [Fact]
    public void A_register_of_both_directions_becomes_import_and_export()
    {
        var readings = Read("net (kWh)", i => i % 2 == 0 ? "0.5" : "-0.2");
        Assert.Equal([(FlowKind.Import, 24.0), (FlowKind.Export, 9.6)], readings.Channels.Select(c => (c.Flow, Math.Round(c.Total.Kwh, 9))));
        Assert.Equal(Severity.Note, Assert.Single(readings.Problems).Severity);
        Assert.All(readings.Quality.Channels, q => Assert.Equal((0, 0), (q.Negative, q.Missing)));
    }
}
