using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.SunRoom;

public sealed class SunPositionTests
{
    private static readonly Gen<Instant> AnyInstant =
        Gen.Long[0, 130L * 365 * 86400].Select(s => Instant.FromUtc(1930, 1, 1, 0, 0) + Duration.FromSeconds(s));

    [Fact] // by hand: on the equinox at the equator the sun passes overhead at solar noon
    public void At_the_equator_on_the_equinox_the_sun_stands_overhead_at_noon()
    {
        var day = Sun.On(new LocalDate(2024, 3, 20), 0, 0);
        Assert.InRange(day.NoonElevationDeg, 89.8, 90.0);
        Assert.InRange(day.Daylight.TotalMinutes, 725, 728); // 12 h and the 6.7 min that refraction and the sun's radius add
    }

    [Fact]
    public void The_series_agrees_with_the_textbook_day_formulas_to_their_own_coarseness()
    {
        // Naive: declination and equation of time by day number only, good to about 1° and 1 min.
        for (var day = 1; day <= 365; day += 7)
        {
            var sun = Sun.At(Instant.FromUtc(2023, 1, 1, 12, 0) + Duration.FromDays(day - 1), 0, 0);
            Assert.InRange(sun.DeclinationDeg - SolarTime.DeclinationDeg(day), -1.2, 1.2);
            Assert.InRange(sun.EquationOfTimeMinutes - SolarTime.EquationOfTimeMinutes(day), -1.0, 1.0);
        }
    }

    [Fact]
    public void Zenith_and_azimuth_agree_with_the_spherical_triangle_written_with_inverse_functions() =>
        Gen.Select(AnyInstant, Gen.Double[-89, 89], Gen.Double[-180, 180]).Sample((instant, latitude, longitude) =>
        {
            const double Rad = Math.PI / 180;
            var sun = Sun.At(instant, latitude, longitude, new Air(0, 10));
            var (phi, delta, omega) = (latitude * Rad, sun.DeclinationDeg * Rad, sun.HourAngleDeg * Rad);
            var zenith = Math.Acos(Math.Clamp((Math.Sin(phi) * Math.Sin(delta)) + (Math.Cos(phi) * Math.Cos(delta) * Math.Cos(omega)), -1, 1)) / Rad;
            var fromSouth = Math.Atan2(Math.Sin(omega), (Math.Cos(omega) * Math.Sin(phi)) - (Math.Tan(delta) * Math.Cos(phi))) / Rad;
            Assert.InRange(sun.ZenithDeg - zenith, -1e-7, 0.0025); // the parallax is left in
            if (zenith is > 1 and < 179) Assert.Equal(0, Math.IEEERemainder(sun.AzimuthDeg - fromSouth - 180, 360), 1e-6);
        });

    [Fact]
    public void The_direction_has_length_one_and_gives_its_angles_back() =>
        Gen.Select(Gen.Double[0.01, 179.9], Gen.Double[0, 359.9]).Sample((zenith, azimuth) =>
        {
            var direction = SunDirection.Of(zenith, azimuth);
            Assert.Equal(1, (direction.East * direction.East) + (direction.North * direction.North) + (direction.Up * direction.Up), 1e-12);
            Assert.Equal(zenith, direction.ZenithDeg, 1e-8);
            Assert.Equal(azimuth, direction.AzimuthDeg, 1e-8);
        });

    [Fact]
    public void At_rise_and_set_the_centre_stands_fifty_minutes_of_arc_below_the_horizon() =>
        Gen.Select(Gen.Int[0, 40000], Gen.Double[-60, 60], Gen.Double[-180, 180]).Sample((day, latitude, longitude) =>
        {
            var sunDay = Sun.On(new LocalDate(1950, 1, 1).PlusDays(day), latitude, longitude);
            foreach (var instant in new[] { sunDay.Rise!.Value, sunDay.Set!.Value })
                Assert.InRange(90 - Sun.At(instant, latitude, longitude, new Air(0, 10)).Direction.ZenithDeg, -0.837, -0.832);
            Assert.True(sunDay.Rise < sunDay.Noon && sunDay.Noon < sunDay.Set);
        });

    [Fact]
    public void North_of_the_polar_circle_the_sun_stays_up_in_june_and_down_in_december()
    {
        var june = Sun.On(new LocalDate(2024, 6, 21), 70, 20);
        var december = Sun.On(new LocalDate(2024, 12, 21), 70, 20);
        Assert.True(june.SunNeverSets);
        Assert.Equal(Duration.FromHours(24), june.Daylight);
        Assert.True(december.SunNeverRises);
        Assert.Equal(Duration.Zero, december.Daylight);
    }

    [Fact]
    public void Refraction_lifts_the_sun_by_about_half_a_degree_at_the_horizon_and_by_nothing_without_air()
    {
        Assert.InRange(Air.Usual.RefractionDeg(0), 0.45, 0.50);
        Assert.Equal(0, new Air(0, 10).RefractionDeg(0));
        Assert.Equal(0, Air.Usual.RefractionDeg(-5));
    }

    [Fact]
    public void A_latitude_beyond_the_pole_is_refused_with_its_range()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => Sun.At(Instant.FromUtc(2024, 1, 1, 0, 0), 91, 0));
        Assert.Contains("from -90 to 90", e.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Sun.SeasonStart(1899, Season.JuneSolstice));
        Assert.Throws<ArgumentOutOfRangeException>(() => SolarTime.DeclinationDeg(0));
    }
}
