using CsCheck;

namespace SolarEconomics.Tests.SunRoom;

public sealed class SurroundingsTests
{
    private const double Rad = Math.PI / 180;

    [Fact]
    public void Glass_passes_what_the_laws_written_with_angles_pass()
    {
        // Naive: Fresnel with sines and tangents of the two angles.
        for (var deg = 1.0; deg < 89; deg++)
        {
            var t = deg * Rad;
            var r = Math.Asin(Math.Sin(t) / 1.526);
            var through = Math.Exp(-0.008 / Math.Cos(r))
                * (1 - (0.5 * (Math.Pow(Math.Sin(r - t) / Math.Sin(r + t), 2) + Math.Pow(Math.Tan(r - t) / Math.Tan(r + t), 2))));
            var square = Math.Exp(-0.008) * (1 - Math.Pow(0.526 / 2.526, 2));
            Assert.Equal(through / square, IncidenceAngle.Glass(Math.Cos(t)), 1e-9);
        }
    }

    [Fact]
    public void Glass_loses_nothing_square_on_and_everything_edge_on()
    {
        Assert.Equal(1, IncidenceAngle.Glass(1), 1e-12);
        Assert.Equal(0, IncidenceAngle.Glass(0));
        Assert.Equal(0, IncidenceAngle.Glass(-0.5));
        Assert.InRange(IncidenceAngle.Glass(1e-6), 0, 1e-4);
        Assert.Equal(0.95, IncidenceAngle.OneConstant(0.5), 1e-12); // by hand: 1 − 0.05 (2 − 1)
    }

    [Fact]
    public void A_horizon_runs_straight_between_its_points_and_across_north()
    {
        var horizon = Horizon.Of((350, 10), (10, 20), (180, 0));
        Assert.Equal(15, horizon.ElevationDeg(0), 1e-9);
        Assert.Equal(10, horizon.ElevationDeg(350), 1e-9);
        Assert.Equal(10, horizon.ElevationDeg(95), 1e-9);
        Assert.True(horizon.Hides(SunDirection.Of(80, 0)));
        Assert.False(horizon.Hides(SunDirection.Of(70, 0)));
    }

    [Fact]
    public void Over_a_free_horizon_a_plane_sees_the_share_of_sky_that_its_tilt_gives() =>
        Gen.Double[0, 90].Sample(tilt => Assert.Equal(new Plane(tilt, 200).SkyShare, Horizon.Free.SkyShare(new Plane(tilt, 1e-200)), 5e-4), iter: 5);

    [Fact] // closed form: a ring of height h leaves cos² h of a level plane's sky
    public void Behind_a_ring_of_thirty_degrees_level_ground_sees_three_quarters_of_the_sky() =>
        Assert.Equal(0.75, Horizon.Of((0, 30)).SkyShare(Plane.Level), 1e-2);

    [Fact]
    public void Two_heights_in_one_direction_are_refused()
    {
        var e = Assert.Throws<ArgumentException>(() => Horizon.Of((90, 5), (90, 12)));
        Assert.Equal("Found two points of the horizon at azimuth 90° (elevations 5° and 12°), expected one height per direction. Keep the higher one.", e.Message);
    }

    [Fact]
    public void Rows_shade_each_other_as_far_as_a_ray_from_the_row_in_front_reaches() =>
        Gen.Select(Gen.Double[5, 80], Gen.Double[1.05, 4], Gen.Double[1, 89], Gen.Double[100, 260]).Sample((tilt, spread, zenith, azimuth) =>
        {
            var plane = new Plane(tilt, 180);
            var rows = new Rows(plane, 2, 2 * spread);
            var sun = SunDirection.Of(zenith, azimuth);
            // Naive: walk up the row behind and ask of each point whether its ray to the sun passes below the upper edge in front.
            var (sin, cos) = Math.SinCos(tilt * Rad);
            var south = -sun.North;
            var shaded = 0;
            const int Points = 4000;
            for (var i = 0; i < Points; i++)
            {
                var s = 2 * (i + 0.5) / Points;
                var (x, z) = (-s * cos, s * sin);
                // Where the ray stands in the plane of the row in front: its points are (pitch − q cos β, q sin β), 0 ≤ q ≤ length.
                var q = -(z + ((rows.PitchM - x) * sun.Up / south)) / (-sin - (cos * sun.Up / south));
                if (south > 0 && sun.CosIncidence(plane) > 0 && q <= 2) shaded++;
            }
            Assert.Equal(shaded / (double)Points, rows.ShadedShare(sun), 1e-2);
        }, iter: 200);

    [Fact]
    public void At_the_masking_angle_the_shade_just_begins()
    {
        var rows = new Rows(new Plane(30, 180), 2, 4);
        Assert.Equal(0, rows.ShadedShare(SunDirection.Of(90 - rows.MaskingAngleDeg - 0.01, 180)), 1e-12);
        Assert.InRange(rows.ShadedShare(SunDirection.Of(90 - rows.MaskingAngleDeg + 0.2, 180)), 0.0001, 0.05);
    }

    [Fact]
    public void Rows_that_overlap_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Rows(new Plane(10, 180), 2, 1.5));
}
