using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>Invented plants through clouds drawn by seed: what an inverter clips, a battery holds back or heat takes is known to the model and hidden from the record.</summary>
public sealed class HeldBackEventsTests
{
    private static readonly Site Bare = Site.At("Test", 45, 8, "Europe/Rome", "EUR");
    private static readonly IntervalGrid Grid = new(Instant.FromUtc(2022, 12, 31, 23, 0), Duration.FromHours(1), 8760);
    private static readonly ModuleType Module = new("m", 400);
    private static readonly Weather Sky = MadeUp();

    /// <summary>Clear sky through clouds; air warm by season and by day, so that the summer has days above 28 °C and cooler spells between.</summary>
    private static Weather MadeUp()
    {
        var clear = Weather.Clear(Bare, Grid);
        var random = new Random(8);
        var (global, air, wind) = (new double[Grid.Count], new double[Grid.Count], new double[Grid.Count]);
        var open = 1.0;
        for (var i = 0; i < Grid.Count; i++)
        {
            var day = i / 24;
            if (i % 24 == 0) open = 0.45 + (0.55 * random.NextDouble());
            global[i] = clear.GlobalWm2[i] * open;
            air[i] = 10 - (12 * Math.Cos(2 * Math.PI * (day - 20) / 365)) + (5 * Math.Cos(2 * Math.PI * ((i % 24) - 15) / 24)) + (4 * Math.Sin(day * 0.7));
            wind[i] = 2;
        }
        return Weather.OfGlobal(Grid, global, air, wind, "made up for tests");
    }

    private static (Plant Plant, GenerationResult Result) Roof(string name, double tilt, double azimuth, double inverterW, Plant? beside = null)
    {
        var inverter = new InverterType(name, inverterW);
        var array = new ModuleArray(name, Module, 8, 2, new Plane(tilt, azimuth));
        var device = new Device(name, MeasurementPoint.InverterAcOut) { Inverter = inverter, InService = new(2023, 1, 1) };
        var plant = (beside is null ? new Plant([device]) : beside.With(device)).With(new Placement(array, name) { From = new(2023, 1, 1), MadeOn = new(2023, 1, 1) });
        return (plant, new GenerationModel(inverter, array).Run(Bare, Sky));
    }

    private static Channel Record(string name, double[] acW, Func<int, bool>? censored = null)
    {
        var (starts, ends, kwh, quality) = (new Instant[Grid.Count], new Instant[Grid.Count], new double[Grid.Count], new Quality[Grid.Count]);
        for (var i = 0; i < Grid.Count; i++)
            (starts[i], ends[i], kwh[i], quality[i]) = (Grid.StartOf(i), Grid.StartOf(i + 1), acW[i] / 1000, censored?.Invoke(i) == true ? Quality.Censored : Quality.Good);
        return new Channel("generation " + name, FlowKind.Generation, starts, ends, kwh, quality) { Device = name };
    }

    private static LocalDate DateOf(int i) => Grid.StartOf(i).InZone(Bare.Zone).Date;

    [Fact]
    public void An_inverter_at_its_limit_is_no_shortfall_and_about_what_it_clipped_is_said()
    {
        var free = Roof("free", 30, 180, 8000);
        var small = Roof("small", 30, 200, 3600, free.Plant);
        var readings = new Readings([Record("free", free.Result.AcW.ToArray()), Record("small", small.Result.AcW.ToArray())], [], []);
        var found = ExpectedAgainstMeasured.Of(Bare with { Plant = small.Plant }, readings, "small");
        Assert.Empty(found.Failures);
        Assert.All(found.Events, e => Assert.Equal(ShortfallKind.Clipping, e.Shortfall.Kind));
        Assert.True(small.Result.ClippedKwh > 100);
        Assert.Equal(small.Result.ClippedKwh, found.ClippedKwh, 0.12 * small.Result.ClippedKwh);
        Assert.Equal(0, found.LostKwh);
        var said = found.Say(CultureInfo.InvariantCulture);
        Assert.Equal("nothing", said.Figure);
        Assert.Contains("stood at its limit for", said.Words, StringComparison.Ordinal);
        Assert.Contains(said.Tables[0].Rows, r => r[1] == "inverter at its limit" && r[2].StartsWith("at its limit of 3.6 kW for", StringComparison.Ordinal));
    }

    [Fact]
    public void With_a_like_sister_the_clipped_energy_is_exact()
    {
        var free = Roof("free", 30, 180, 8000);
        var small = Roof("small", 30, 180, 4000, free.Plant);
        // By hand: the same plane, the clipped roof's record cut at 4 kW from the sister's own.
        double[] cut = [.. free.Result.AcW.ToArray().Select(w => Math.Min(w, 4000))];
        var clipped = free.Result.AcW.ToArray().Zip(cut, (a, b) => (a - b) / 1000).Sum();
        var found = ExpectedAgainstMeasured.Of(Bare with { Plant = small.Plant }, new Readings([Record("free", free.Result.AcW.ToArray()), Record("small", cut)], [], []), "small");
        Assert.True(clipped > 50);
        Assert.Equal(clipped, found.ClippedKwh, 0.01 * clipped);
        Assert.Empty(found.Failures);
    }

    [Fact]
    public void A_failure_on_bright_days_is_still_found_where_the_inverter_clips()
    {
        var free = Roof("free", 30, 180, 8000);
        var small = Roof("small", 30, 200, 3600, free.Plant);
        var span = new DateSpan(new(2023, 7, 3), new(2023, 7, 10));
        double[] failed = [.. small.Result.AcW.ToArray().Select((w, i) => span.Contains(DateOf(i)) ? 0 : w)];
        var found = ExpectedAgainstMeasured.Of(Bare with { Plant = small.Plant }, new Readings([Record("free", free.Result.AcW.ToArray()), Record("small", failed)], [], []), "small");
        var outage = Assert.Single(found.Failures);
        Assert.Equal((ShortfallKind.Outage, span), (outage.Shortfall.Kind, outage.Shortfall.Days));
    }

    [Fact]
    public void What_a_full_battery_holds_back_is_an_event_of_its_own_and_no_failure()
    {
        // Invented: above 1.5 kW the battery is full from 11 to 17 on every third day from June on, and the record marks it.
        var roof = Roof("roof", 30, 180, 20_000);
        bool IsFull(int i) => DateOf(i) >= new LocalDate(2023, 6, 1) && DateOf(i) < new LocalDate(2023, 8, 1) && DateOf(i).Day % 3 == 0 && Grid.StartOf(i).InZone(Bare.Zone).Hour is >= 11 and < 17;
        double[] held = [.. roof.Result.AcW.ToArray().Select((w, i) => IsFull(i) ? Math.Min(w, 1500) : w)];
        var truth = roof.Result.AcW.ToArray().Zip(held, (a, b) => (a - b) / 1000).Sum();
        var found = ExpectedAgainstMeasured.Of(Bare with { Plant = roof.Plant }, new Readings([Record("roof", held, IsFull)], [], []), "roof", new LossOptions { Weather = Sky });
        Assert.Empty(found.Failures);
        Assert.True(found.TellsCurtailment);
        Assert.Equal(truth, found.CurtailedKwh, 0.03 * truth);
        Assert.All(found.Events, e => Assert.Equal(ShortfallKind.Curtailment, e.Shortfall.Kind));
        Assert.Contains("A full battery or a limit held back about", found.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
        // The performance ratio leaves those intervals out: as if nothing had been held back.
        Assert.Equal(roof.Result.Yields.PerformanceRatio, found.Yields!.Value.PerformanceRatio, 0.01);
        Assert.Equal(roof.Result.PerformanceRatioAt25C, found.PerformanceRatioAt25C!.Value, 0.01);
    }

    [Fact]
    public void A_fan_that_failed_shows_as_short_hot_days()
    {
        // The trade's setting: a cabinet's fan is set to 28 °C (and runs on 12 V); it stood still in July, and the inverter held back on the hot days only.
        Assert.Equal(28, Shortfalls.HotAirC);
        var roof = Roof("roof", 30, 180, 20_000);
        var hottest = Enumerable.Range(0, Grid.Count).GroupBy(DateOf).ToDictionary(g => g.Key, g => g.Max(i => Sky.AirC[i]));
        bool IsHot(int i) => DateOf(i).Month == 7 && hottest[DateOf(i)] >= 28;
        double[] held = [.. roof.Result.AcW.ToArray().Select((w, i) => IsHot(i) ? 0.6 * w : w)];
        Assert.True(Enumerable.Range(0, Grid.Count).Count(IsHot) > 5 * 24);
        var found = ExpectedAgainstMeasured.Of(Bare with { Plant = roof.Plant }, new Readings([Record("roof", held)], [], []), "roof", new LossOptions { Weather = Sky });
        Assert.NotEmpty(found.Failures);
        Assert.All(found.Failures, e => Assert.Equal(ShortfallKind.HeatDerating, e.Shortfall.Kind));
        Assert.Equal("short only on days above 28 °C", found.Failures[0].Shortfall.Why);
    }
}
