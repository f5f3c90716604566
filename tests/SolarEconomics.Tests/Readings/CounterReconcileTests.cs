using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>A lifetime counter beside intervals: each fault put in is named, and none on clean data.</summary>
public sealed class CounterReconcileTests
{
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
    private static readonly LocalDate First = new(2024, 3, 1);

    /// <summary>120 days of hours of an invented roof.</summary>
    private static double[] Roof(int seed, double peakKwh)
    {
        var random = new Random(seed);
        var cloud = Enumerable.Range(0, 120).Select(_ => 0.3 + (0.7 * random.NextDouble())).ToArray();
        return [.. Enumerable.Range(0, 120 * 24).Select(i => Math.Max(0, Math.Sin((i % 24 - 6) / 12.0 * Math.PI)) * peakKwh * cloud[i / 24])];
    }

    private static Channel Of(string name, double[] kwh)
    {
        var start = First.AtStartOfDayInZone(Zone).ToInstant();
        var starts = kwh.Select((_, i) => start + Duration.FromHours(i)).ToArray();
        return new Channel(name, FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromHours(1))], kwh, new Quality[kwh.Length]) { Device = name };
    }

    /// <summary>Readings each twentieth day at noon, from an opening value on.</summary>
    private static Counter CounterOf(double[] kwh, double opening = 1234) => new("roof", MeasurementPoint.InverterAcOut,
        [.. Enumerable.Range(0, 6).Select(k => new CounterReading(First.PlusDays(20 * k), Math.Round(opening + kwh.Take((20 * 24 * k) + 12).Sum(), 1)))]);

    private static CounterComparison Compare(Counter counter, double[] intervals, params Channel[] others) => Reconcile.Compare(counter, Of("roof", intervals), Zone, others);

    [Theory]
    [InlineData(1), InlineData(2), InlineData(3), InlineData(4), InlineData(5)]
    public void Clean_data_names_no_fault(int seed)
    {
        var comparison = Compare(CounterOf(Roof(seed, 3)), Roof(seed, 3), Of("barn", Roof(seed + 50, 1)));
        Assert.Empty(comparison.Reasons);
        Assert.Equal(5, comparison.Periods.Count);
        Assert.All(comparison.Periods, p => Assert.Equal((true, 0.0), (p.Complete, p.ApartKwh)));
    }

    [Theory]
    [InlineData(1000, "\"roof\" is a thousand times the other")]
    [InlineData(0.001, "\"roof\" is a thousand times the other")]
    public void A_factor_of_a_thousand_is_named(double factor, string words)
    {
        var reason = Assert.Single(Compare(CounterOf(Roof(1, 3)), [.. Roof(1, 3).Select(k => k * factor)]).Reasons);
        Assert.Equal(DisagreementKind.UnitFactor, reason.Kind);
        Assert.StartsWith(words, reason.Words);
    }

    [Fact]
    public void An_opposite_sign_is_named() =>
        Assert.Equal(DisagreementKind.Sign, Assert.Single(Compare(CounterOf(Roof(1, 3)), [.. Roof(1, 3).Select(k => -k)]).Reasons).Kind);

    [Fact]
    public void A_device_that_the_intervals_lack_is_named()
    {
        var (roof, barn) = (Roof(1, 3), Roof(2, 1.5));
        var reason = Assert.Single(Compare(CounterOf([.. roof.Zip(barn, (a, b) => a + b)]), roof, Of("barn", barn), Of("shed", Roof(3, 0.8))).Reasons);
        Assert.Equal((DisagreementKind.MissingDevice, "\"roof\" lacks what \"barn\" counts"), (reason.Kind, reason.Words));
    }

    [Fact]
    public void Two_digits_swapped_in_typing_are_named_with_the_reading()
    {
        var counter = CounterOf(Roof(1, 3));
        var typed = counter.Readings[3] with { Kwh = 1938.6 };
        // Typed 2 to 3 hundred too high by swapping: take the true reading and swap its second and third digit.
        var text = counter.Readings[3].Kwh.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture).ToCharArray();
        (text[1], text[2]) = (text[2], text[1]);
        typed = typed with { Kwh = double.Parse(text, System.Globalization.CultureInfo.InvariantCulture) };
        var reasons = Compare(counter with { Readings = [.. counter.Readings.Take(3), typed, .. counter.Readings.Skip(4)] }, Roof(1, 3)).Reasons;
        Assert.Equal(DisagreementKind.SwappedDigits, reasons[0].Kind);
        Assert.Contains(FormattableString.Invariant($"{typed.Kwh:R} for {counter.Readings[3].Kwh:R}"), reasons[0].Words);
    }

    [Fact]
    public void A_reset_that_lost_energy_is_named()
    {
        var counter = CounterOf(Roof(1, 3));
        var reset = counter.Readings.Select((r, k) => k < 3 ? r : r with { Kwh = r.Kwh - counter.Readings[2].Kwh - 150 }).ToList();
        Assert.Equal(DisagreementKind.Reset, Assert.Single(Compare(counter with { Readings = reset }, Roof(1, 3)).Reasons).Kind);
    }

    [Fact]
    public void A_period_with_a_hole_in_the_intervals_is_not_judged()
    {
        var roof = Roof(1, 3);
        var channel = Of("roof", roof);
        var quality = new Quality[roof.Length];
        quality[30 * 24 + 12] = Quality.Missing;
        var holed = new Channel("roof", FlowKind.Generation, channel.Starts.ToArray(), channel.Ends.ToArray(), [.. roof.Select((k, i) => i == 30 * 24 + 12 ? 0 : k)], quality);
        var comparison = Reconcile.Compare(CounterOf(roof), holed, Zone);
        Assert.Equal([true, false, true, true, true], comparison.Periods.Select(p => p.Complete));
        Assert.Empty(comparison.Reasons);
    }

    [Fact]
    public void Intervals_of_two_lengths_are_compared_in_the_longer()
    {
        var roof = Roof(1, 3);
        var fine = Of("roof", roof);
        var comparison = Reconcile.Compare(fine, fine.InStepsOf(Duration.FromHours(4)));
        Assert.Empty(comparison.Reasons);
        Assert.Equal(comparison.FirstKwh, comparison.SecondKwh, 6);
        Assert.Equal(DisagreementKind.UnitFactor, Assert.Single(Reconcile.Compare(fine, Of("meter", [.. roof.Select(k => k * 1000)]).InStepsOf(Duration.FromHours(4))).Reasons).Kind);
    }
}
