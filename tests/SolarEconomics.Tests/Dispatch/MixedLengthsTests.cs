using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Intervals of records: of any length, mixed, none of them a round one.</summary>
public class MixedLengthsTests
{
    private const int Count = 40;

    private static readonly Gen<int[]> s_seconds = Gen.Select(Gen.Int[0, 6], Gen.Int[1, 7200]).Select((kind, any) => kind == 6 ? any : new[] { 60, 300, 900, 1800, 3600, 86_400 }[kind]).Array[Count];

    [Fact]
    public void Every_interval_of_a_record_of_mixed_lengths_closes_inside_the_limits_of_its_own_length() =>
        Gen.Select(s_seconds, Gen.Double[0, 6].Array[Count], Gen.Double[0, 6].Array[Count], Gen.Select(Gen.Double[0, 10], Gen.Double[0.1, 5], Gen.Double[0, 0.5])).Sample((seconds, sunKw, useKw, b) =>
        {
            var time = TimeOf(seconds);
            var battery = Battery.Of(b.Item1, 0.85, b.Item2) with { SelfDischargePerMonth = b.Item3, StandbyW = 15, Taper = new ChargeTaper(0.8, 0.1) };
            var flows = Run(time, battery, sunKw, useKw);
            for (var i = 0; i < Count; i++)
            {
                Assert.InRange(flows.ResidualKwh(i), -1e-9, 1e-9);
                Assert.InRange(flows.StoredKwh[i + 1], 0, battery.UsableKwh);
                Assert.InRange(flows[FlowPath.ArrayToBattery][i] + flows[FlowPath.GridToBattery][i], 0, (b.Item2 * time.Hours[i]) + 1e-9);
                Assert.InRange(flows[FlowPath.BatteryToUse][i] + flows[FlowPath.BatteryToStandby][i], 0, (b.Item2 * time.Hours[i]) + 1e-9);
            }
        }, iter: 2000);

    [Fact]
    public void Intervals_cut_in_uneven_pieces_at_the_same_power_move_the_same_energy() =>
        Gen.Select(Gen.Double[0, 6].Array[6], Gen.Double[0, 6].Array[6], Gen.Int[1, 3599].Array[6]).Sample((sunKw, useKw, cuts) =>
        {
            // Without a taper: with one, a short interval near full may refuse of a small surplus what the whole hour takes in.
            var battery = Battery.Of(4, 0.9, 2) with { StandbyW = 10 };
            var whole = Run(TimeOf([.. Enumerable.Repeat(3600, 6)]), battery, sunKw, useKw);
            var cut = Run(TimeOf([.. cuts.SelectMany(c => new[] { c, 3600 - c })]), battery, [.. sunKw.SelectMany(kw => new[] { kw, kw })], [.. useKw.SelectMany(kw => new[] { kw, kw })]);
            Assert.Equal(whole.StoredKwh[6], cut.StoredKwh[12], 1e-9);
            Assert.Equal(whole.Totals.ImportKwh, cut.Totals.ImportKwh, 1e-9);
            Assert.Equal(whole.Totals.ExportKwh, cut.Totals.ExportKwh, 1e-9);
        }, iter: 500);

    private static EnergyFlows Run(Timeline time, Battery battery, double[] sunKw, double[] useKw)
    {
        double[] Kwh(double[] kw) => [.. kw.Select((value, i) => value * time.Hours[i])];
        return new EnergySystem { Battery = battery }.Run(new Conditions(LoadSeries.Of(time, Kwh(useKw))) { Arrays = [ArraySupply.Ac("roof", Kwh(sunKw))] }, Control.SelfConsumption);
    }

    private static Timeline TimeOf(int[] seconds)
    {
        var ends = new Instant[seconds.Length];
        // Two hours before summer time begins, so that the local clock jumps inside the record.
        var start = Instant.FromUtc(2025, 3, 29, 23, 0);
        for (var i = 0; i < ends.Length; i++) ends[i] = (i == 0 ? start : ends[i - 1]) + Duration.FromSeconds(seconds[i]);
        var channel = new Channel("meter", FlowKind.Use, [start, .. ends[..^1]], ends, new double[ends.Length], Enumerable.Repeat(Quality.Good, ends.Length).ToArray());
        return Timeline.Of(channel, Made.Dublin);
    }
}
