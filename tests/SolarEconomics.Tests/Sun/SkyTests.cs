using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.SunRoom;

public sealed class SkyTests
{
    private static readonly Gen<SunDirection> UpSun =
        Gen.Select(Gen.Double[0, 86], Gen.Double[0, 360]).Select((zenith, azimuth) => SunDirection.Of(zenith, azimuth));

    private static readonly Gen<Plane> AnyPlane =
        Gen.Select(Gen.Double[0, 90], Gen.Double[0, 360]).Select((tilt, azimuth) => new Plane(tilt, azimuth));

    private static readonly Gen<SkyModel> AnyModel = Gen.Int[0, 3].Select(i => (SkyModel)i);

    [Fact]
    public void A_split_closes_beam_and_diffuse_make_the_global_again() =>
        Gen.Select(UpSun, Gen.Double[0, 1200]).Sample((sun, global) =>
        {
            var split = Decomposition.Split(global, sun, 1361);
            Assert.Equal(global, (split.BeamNormalWm2 * sun.Up) + split.DiffuseWm2, 1e-9);
            Assert.True(split.BeamNormalWm2 >= 0 && split.DiffuseWm2 >= 0);
        });

    [Fact]
    public void On_level_ground_every_model_but_the_largest_gives_the_global_back() =>
        Gen.Select(UpSun, Gen.Double[0, 900], Gen.Double[1, 400], Gen.Int[0, 2].Select(i => (SkyModel)i))
            .Sample((sun, beam, diffuse, model) =>
            {
                var sky = new Sky(sun, Irradiance.FromBeam(beam, diffuse, sun), 1361);
                Assert.Equal(sky.Irradiance.GlobalWm2, sky.On(Plane.Level, model).TotalWm2, 1e-8);
            });

    [Fact]
    public void The_largest_model_gives_the_global_back_on_level_ground_while_the_sun_is_above_five_degrees() =>
        Gen.Select(Gen.Double[0, 84.9], Gen.Double[0, 900], Gen.Double[1, 400]).Sample((zenith, beam, diffuse) =>
        {
            var sun = SunDirection.Of(zenith, 180);
            var sky = new Sky(sun, Irradiance.FromBeam(beam, diffuse, sun), 1361);
            Assert.Equal(sky.Irradiance.GlobalWm2, sky.On(Plane.Level, SkyModel.Perez).TotalWm2, 1e-8);
        });

    [Fact]
    public void Sun_and_plane_mirrored_from_east_to_west_receive_the_same() =>
        Gen.Select(UpSun, AnyPlane, AnyModel, Gen.Double[1, 900], Gen.Double[1, 400]).Sample((sun, plane, model, beam, diffuse) =>
        {
            var mirrored = sun with { East = -sun.East };
            var east = new Sky(sun, Irradiance.FromBeam(beam, diffuse, sun), 1361).On(plane, model);
            var west = new Sky(mirrored, Irradiance.FromBeam(beam, diffuse, mirrored), 1361).On(plane.Mirrored, model);
            Assert.Equal(east.TotalWm2, west.TotalWm2, 1e-8);
        });

    [Fact]
    public void No_part_of_the_light_on_a_plane_is_negative_or_missing() =>
        Gen.Select(UpSun, AnyPlane, AnyModel, Gen.Double[0, 1000], Gen.Double[0, 500]).Sample((sun, plane, model, beam, diffuse) =>
        {
            var on = new Sky(sun, Irradiance.FromBeam(beam, diffuse, sun), 1361).On(plane, model);
            Assert.True(on.BeamWm2 >= 0 && on.AroundSunWm2 >= 0 && on.DomeWm2 >= 0 && on.GroundWm2 >= 0, on.ToString());
            Assert.True(double.IsFinite(on.TotalWm2));
        });

    [Fact]
    public void A_clear_sky_closes_and_never_beats_the_sun_above_the_atmosphere() =>
        Gen.Select(UpSun, Gen.Double[1, 10], Gen.Double[0, 4000]).Sample((sun, turbidity, height) =>
        {
            var clear = ClearSky.At(sun, 1361, turbidity, height);
            Assert.Equal(clear.GlobalWm2, (clear.BeamNormalWm2 * sun.Up) + clear.DiffuseWm2, 1e-9);
            Assert.InRange(clear.GlobalWm2, 0, 1361 * sun.Up);
        });

    [Fact]
    public void Two_clear_sky_models_agree_within_a_tenth_at_high_sun()
    {
        var sun = SunDirection.Of(30, 180);
        var ratio = ClearSky.At(sun, 1361, 3).GlobalWm2 / ClearSky.ByDayOfYear(sun, 80).GlobalWm2;
        Assert.InRange(ratio, 0.9, 1.1);
    }

    [Fact] // by hand: a level day is the sum of its minutes
    public void The_energy_of_a_day_above_the_atmosphere_is_the_sum_of_its_minutes()
    {
        var noon = Sun.On(new LocalDate(2024, 5, 1), 53, -9).Noon;
        var sum = 0.0;
        for (var minute = -720; minute < 720; minute++)
        {
            var at = noon + Duration.FromMinutes(minute + 0.5);
            sum += AboveAtmosphere.NormalWm2(at) * Math.Max(0, Sun.At(at, 53, -9).Direction.Up) / 60 / 1000;
        }
        Assert.Equal(sum, AboveAtmosphere.DayKwhM2(new LocalDate(2024, 5, 1), 53, -9), 1e-2);
    }

    [Fact]
    public void Air_mass_agrees_with_the_formula_by_degrees_within_one_per_cent_above_five_degrees()
    {
        for (var elevation = 5.0; elevation < 90; elevation++)
        {
            // The formula by degrees takes the sun as seen, the one by cosine the true sun.
            var seen = elevation + Air.Usual.RefractionDeg(elevation);
            var byDegrees = 1 / (Math.Sin(seen * Math.PI / 180) + (0.50572 * Math.Pow(seen + 6.07995, -1.6364)));
            Assert.InRange(AirMass.Relative(Math.Sin(elevation * Math.PI / 180)) / byDegrees, 0.99, 1.01);
        }
    }

    [Fact]
    public void A_negative_global_is_refused_in_words()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => Decomposition.Split(-3, SunDirection.Of(40, 180), 1361));
        Assert.Contains("night offset", e.Message, StringComparison.Ordinal);
    }
}
