using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Faults put into clean data: each is named, and none is named where there is none.</summary>
public sealed class ReconcileTests
{
    private static readonly Instant Start = Instant.FromUtc(2024, 6, 1, 0, 0);

    /// <summary>Thirty days of half hours of an invented roof with passing clouds.</summary>
    private static double[] Roof(int seed, double peakKwh)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, 30 * 48).Select(i => Math.Max(0, Math.Sin((i % 48 - 12) / 24.0 * Math.PI)) * peakKwh * (0.3 + (0.7 * random.NextDouble())))];
    }

    private static Channel Of(string name, IEnumerable<double> kwh, int shift = 0)
    {
        var values = kwh.ToArray();
        var starts = Enumerable.Range(0, values.Length).Select(i => Start + Duration.FromMinutes(30 * (i + shift))).ToArray();
        return new Channel(name, FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromMinutes(30))], values, new Quality[values.Length]);
    }

    [Fact]
    public void Clean_data_names_no_fault()
    {
        var noise = new Random(9);
        var roof = Roof(1, 2);
        var comparison = Reconcile.Compare(Of("inverter", roof), Of("meter", roof.Select(v => v * (0.99 + (0.02 * noise.NextDouble())))), Of("barn", Roof(2, 1)));
        Assert.Empty(comparison.Reasons);
    }

    [Theory]
    [InlineData(2, "the clock of \"meter\" is 60 minutes ahead of the other")]
    [InlineData(-2, "the clock of \"inverter\" is 60 minutes ahead of the other")]
    [InlineData(20, "the clock of \"meter\" is 600 minutes ahead of the other")]
    public void A_clock_shift_is_named_with_its_minutes(int halfHours, string words)
    {
        var roof = Roof(1, 2);
        var reason = Assert.Single(Reconcile.Compare(Of("inverter", roof), Of("meter", roof, halfHours)).Reasons);
        Assert.Equal((DisagreementKind.ClockShift, words), (reason.Kind, reason.Words));
    }

    [Fact]
    public void A_factor_of_a_thousand_is_named()
    {
        var roof = Roof(1, 2);
        Assert.Equal(DisagreementKind.UnitFactor, Assert.Single(Reconcile.Compare(Of("inverter", roof), Of("meter", roof.Select(v => v * 1000))).Reasons).Kind);
    }

    [Fact]
    public void An_opposite_sign_is_named()
    {
        var roof = Roof(1, 2);
        Assert.Equal(DisagreementKind.Sign, Assert.Single(Reconcile.Compare(Of("inverter", roof), Of("meter", roof.Select(v => -v))).Reasons).Kind);
    }

    [Fact]
    public void A_device_that_one_side_lacks_is_named()
    {
        var (roof, barn) = (Roof(1, 2), Roof(2, 1));
        var reason = Assert.Single(Reconcile.Compare(Of("meter", roof.Zip(barn, (a, b) => a + b)), Of("inverter", roof), Of("barn", barn), Of("shed", Roof(3, 1))).Reasons);
        Assert.Equal((DisagreementKind.MissingDevice, "\"inverter\" lacks what \"barn\" counts"), (reason.Kind, reason.Words));
    }

    [Fact]
    public void A_balance_has_a_residual_only_where_use_is_metered()
    {
        Channel One(FlowKind flow, double kwh) => new(flow.ToString(), flow, [Start], [Start + Duration.FromHours(1)], [kwh], [Quality.Good]) { Device = flow == FlowKind.Generation ? "array" : null };
        var plant = new Plant([new Device("array", MeasurementPoint.ControllerDcOut) { ToAcLow = 0.9, ToAcHigh = 0.95 }]);
        var some = new Readings([One(FlowKind.Generation, 100), One(FlowKind.Import, 50), One(FlowKind.Export, 30)], [], []);
        var balance = EnergyBalance.Of(some, plant);
        // By hand: 90 to 95 at the board, 50 in, 30 out.
        Assert.Equal((110.0, 115.0), (balance.LeftLowKwh, balance.LeftHighKwh));
        Assert.Null(balance.Residual);
        var all = new Readings([.. some.Channels, One(FlowKind.Use, 108)], [], []);
        Assert.Equal((2.0, 7.0), EnergyBalance.Of(all, plant).Residual);
    }
}
