using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class GenerationModelTests
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly ModuleType Module = new("270", 270) { PowerPerK = -0.0041 };
    private static readonly InverterType Inverter = new("3 kW", 3000) { NightW = 2 };

    private static readonly Gen<Plane> AnyPlane = Gen.Select(Gen.Double[0, 90], Gen.Double[0, 360]).Select((tilt, azimuth) => new Plane(tilt, azimuth));

    [Fact]
    public void Lanes_and_steps_agree_to_nine_digits_on_global_weather_of_any_step_length() =>
        Gen.Select(AnyPlane, Gen.Int[0, 4], Gen.Int[1, 3000], Gen.Int[0, 1]).Sample((plane, length, count, sky) =>
        {
            var step = Duration.FromMinutes(new[] { 5, 15, 30, 60, 120 }[length]);
            var weather = MadeUp(new IntervalGrid(Instant.FromUtc(2023, 5, 3, 0, 0), step, count), seed: count, split: false);
            AssertLanesAgree(new GenerationModel(Inverter, Array(plane)) { Sky = sky == 0 ? SkyModel.HayDavies : SkyModel.Isotropic }, weather);
        }, iter: 12);

    [Fact]
    public void Lanes_and_steps_agree_to_nine_digits_on_split_weather_and_two_arrays()
    {
        var weather = MadeUp(new IntervalGrid(Instant.FromUtc(2024, 1, 1, 0, 0), Duration.FromMinutes(30), 17568), seed: 7, split: true);
        AssertLanesAgree(new GenerationModel(Inverter with { HighestInputW = 3300 }, Array(new Plane(35, 180)), Array(new Plane(20, 270)))
        {
            AgeFactor = 0.93,
            DownTime = 0.01,
        }, weather);
    }

    [Fact]
    public void Losses_sum_to_nominal_less_ac()
    {
        var result = new GenerationModel(Inverter, Array(new Plane(35, 180))) { Horizon = Horizon.Of((90, 10), (270, 25)), AgeFactor = 0.9, DownTime = 0.02 }
            .Run(Place, Clear(60, 8760));
        Assert.Equal(result.NominalKwh - result.AcKwh, result.Losses.Sum(l => l.Kwh), 1e-9 * result.NominalKwh);
        Assert.Equal(result.AcKwh, result.AcW.ToArray().Sum() / 1000, 1e-9 * result.NominalKwh);
        Assert.All(result.Losses.Where(l => l.Name != "heat"), l => Assert.True(l.Kwh >= -1e-9 * result.NominalKwh, l.Name));
        Assert.True(result.Losses.Single(l => l.Name == "shade").Kwh > 0);
        Assert.Equal(result.AcKwh, result.ByMonth().Sum(m => m.Kwh), 1e-6);
        Assert.Equal(12, result.ByMonth().Count(m => m.Kwh > 1));
    }

    [Fact]
    public void Without_any_loss_a_plant_gives_its_rating_times_the_light()
    {
        var module = new ModuleType("ideal", 300) { PowerPerK = 0, LossAt200Wm2 = 0 };
        var model = new GenerationModel(new InverterType("ideal", 1e6) { Efficiency = EfficiencyCurve.Flat(1) }, new ModuleArray("a", module, 10, 1, new Plane(30, 180)))
        {
            SoilingLoss = 0,
            MismatchLoss = 0,
            WiringLossAtRated = 0,
        };
        var result = model.Run(Place, Clear(60, 24 * 30));
        var reflected = result.Losses.Single(l => l.Name == "reflection at the glass").Kwh;
        Assert.Equal(result.NominalKwh - reflected, result.AcKwh, 1e-9 * result.NominalKwh);
        Assert.InRange(reflected / result.NominalKwh, 0.01, 0.06);
    }

    [Fact]
    public void East_and_west_mirrored_make_the_same_over_a_symmetric_day()
    {
        // Around solar noon of a day close to the solstice, when the declination stands still.
        var noon = Sun.On(new LocalDate(2023, 6, 21), Place).Noon;
        var grid = new IntervalGrid(noon - Duration.FromHours(12), Duration.FromMinutes(5), 288);
        var weather = Weather.Clear(Place, grid);
        double Ac(double azimuth) => new GenerationModel(Inverter, Array(new Plane(40, azimuth))).Run(Place, weather).AcKwh;
        Assert.Equal(1, Ac(90) / Ac(270), 1e-4);
    }

    [Fact]
    public void Clipping_at_a_small_inverter_is_counted_and_a_larger_one_gets_it_back()
    {
        double Clipped(double ratedAcW) => new GenerationModel(new InverterType("i", ratedAcW), Array(new Plane(35, 180))).Run(Place, Clear(5, 105120)).Losses.Single(l => l.Name == "clipping").Kwh;
        Assert.True(Clipped(2000) > Clipped(2500));
        Assert.Equal(0, Clipped(6000));
    }

    [Fact]
    public void Hourly_steps_hide_part_of_the_clipping_that_five_minute_steps_show()
    {
        // The same clear days: an hour's mean lies below its peak.
        var model = new GenerationModel(new InverterType("i", 2000), Array(new Plane(35, 180)));
        var fine = MadeUp(new IntervalGrid(Instant.FromUtc(2023, 1, 1, 0, 0), Duration.FromMinutes(5), 105120), seed: 3, split: false);
        var hourly = Weather.OfGlobal(new IntervalGrid(fine.Grid.Start, Duration.FromHours(1), 8760), Means(fine.GlobalWm2, 12), Means(fine.AirC, 12), Means(fine.WindMs, 12), "means");
        Assert.True(model.Run(Place, hourly).Losses.Single(l => l.Name == "clipping").Kwh < model.Run(Place, fine).Losses.Single(l => l.Name == "clipping").Kwh);
    }

    [Fact]
    public void A_year_in_the_west_of_ireland_lies_where_yield_maps_put_it()
    {
        // Not a check value: 0.4 of clear sky's light all year, an order of magnitude only.
        var clear = Clear(60, 8760);
        var dull = Weather.OfGlobal(clear.Grid, [.. clear.GlobalWm2.ToArray().Select(g => g * 0.55)], clear.AirC.ToArray(), clear.WindMs.ToArray(), "0.55 of clear sky");
        var yields = new GenerationModel(new InverterType("i", 5000), Array(new Plane(35, 180))).Run(Place, dull).Yields;
        Assert.InRange(yields.FinalHours, 700, 1150);
        Assert.InRange(yields.PerformanceRatio, 0.75, 0.92);
    }

    [Fact]
    public void The_night_is_load_of_the_plant_and_no_loss_of_generation()
    {
        var result = new GenerationModel(Inverter, Array(new Plane(35, 180))).Run(Place, Clear(60, 8760));
        Assert.InRange(result.StandbyKwh, 2 * 4000 / 1000.0, 2 * 4800 / 1000.0); // 2 W in about half of 8,760 h
        Assert.DoesNotContain(result.AcW.ToArray(), w => w < 0);
    }

    [Fact]
    public void A_run_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => new GenerationModel(Inverter, Array(Plane.Level)).Run(Place, Clear(60, 48), stop.Token));
    }

    internal static void AssertLanesAgree(GenerationModel model, Weather weather)
    {
        var lanes = model.Run(Place, weather, inLanes: true);
        var steps = model.Run(Place, weather, inLanes: false);
        for (var i = 0; i < weather.Grid.Count; i++)
        {
            AssertClose(steps.PlaneWm2[i], lanes.PlaneWm2[i]);
            AssertClose(steps.DcW[i], lanes.DcW[i]);
            AssertClose(steps.AcW[i], lanes.AcW[i]);
        }
        AssertClose(steps.AcKwh, lanes.AcKwh);
        AssertClose(steps.NominalKwh, lanes.NominalKwh);
        Assert.Equal(steps.ClippedHours, lanes.ClippedHours);
        for (var l = 0; l < steps.Losses.Count; l++)
            Assert.InRange(Math.Abs(steps.Losses[l].Kwh - lanes.Losses[l].Kwh), 0, 1e-9 * Math.Max(1e-6, steps.NominalKwh));
    }

    /// <summary>1e-9 relative; of anything below a thousandth of a watt.</summary>
    private static void AssertClose(double expected, double got) =>
        Assert.InRange(Math.Abs(expected - got), 0, 1e-9 * Math.Max(Math.Abs(expected), 1e-3));

    private static ModuleArray Array(Plane plane) => new("test", Module, 12, 1, plane);

    private static Weather Clear(int minutes, int count) =>
        Weather.Clear(Place, new IntervalGrid(Instant.FromUtc(2023, 1, 1, 0, 0), Duration.FromMinutes(minutes), count));

    /// <summary>Clear sky through clouds that come and go: seeded, with the clear sky's edges.</summary>
    internal static Weather MadeUp(IntervalGrid grid, int seed, bool split)
    {
        var clear = Weather.Clear(Place, grid);
        var random = new Random(seed);
        var (global, beam, diffuse, air, wind) = (new double[grid.Count], new double[grid.Count], new double[grid.Count], new double[grid.Count], new double[grid.Count]);
        for (var i = 0; i < grid.Count; i++)
        {
            var open = random.NextDouble();
            (beam[i], diffuse[i]) = (clear.BeamNormalWm2[i] * open * open, clear.DiffuseWm2[i] * (1.5 - (open / 2)));
            global[i] = split ? Math.Max(diffuse[i], clear.GlobalWm2[i] * open) : clear.GlobalWm2[i] * open;
            (air[i], wind[i]) = (-5 + (random.NextDouble() * 35), random.NextDouble() * 12);
        }
        return split ? Weather.OfParts(grid, global, beam, diffuse, air, wind, "made up") : Weather.OfGlobal(grid, global, air, wind, "made up");
    }

    private static double[] Means(ReadOnlySpan<double> values, int of)
    {
        var means = new double[values.Length / of];
        for (var i = 0; i < means.Length; i++)
            for (var k = 0; k < of; k++) means[i] += values[(i * of) + k] / of;
        return means;
    }
}
