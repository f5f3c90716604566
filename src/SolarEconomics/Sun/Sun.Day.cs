using NodaTime;

namespace SolarEconomics;

/// <summary>Sunrise, noon and sunset of a day.</summary>
public static partial class Sun
{
    /// <summary>Elevation of the sun's centre when its upper edge is seen on a free horizon: 34′ of refraction and 16′ of radius.</summary>
    private const double RiseElevationDeg = -50.0 / 60.0;

    /// <summary>Sunrise, solar noon and sunset that belong to a local date.</summary>
    /// <param name="date">Date at the place; the day is the one whose solar noon is nearest to 12:00 of mean solar time on that date.</param>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="longitudeDeg">Degrees, east positive. Range: −180 to 180.</param>
    /// <remarks>On a free horizon at sea level. Tables by others use the same convention and print whole minutes. Source: sun-4.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Latitude or longitude is outside its range.</exception>
    public static SunDay On(LocalDate date, double latitudeDeg, double longitudeDeg)
    {
        Require.Within(latitudeDeg, -90, 90, "degrees, north positive");
        Require.Within(longitudeDeg, -180, 180, "degrees, east positive");
        var meanNoon = date.At(LocalTime.Noon).InUtc().ToInstant() - Duration.FromMinutes(4 * longitudeDeg);
        var noon = meanNoon;
        for (var i = 0; i < 3; i++)
            noon = meanNoon - Duration.FromMinutes(SolarCoordinates.At(noon).EquationOfTimeMinutes);
        var rise = Crossing(noon, -1, latitudeDeg, longitudeDeg);
        var set = Crossing(noon, 1, latitudeDeg, longitudeDeg);
        var noonElevation = 90 - At(noon, latitudeDeg, longitudeDeg).Direction.ZenithDeg;
        return new SunDay(date, noon, rise, set, noonElevation);
    }

    /// <summary>Sunrise, solar noon and sunset that belong to a date at a site.</summary>
    /// <param name="date">Local date.</param>
    /// <param name="site">The site.</param>
    public static SunDay On(LocalDate date, Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return On(date, site.LatitudeDeg, site.LongitudeDeg);
    }

    // Repeated hour angle of the horizon at the declination of the last guess: the sun moves 0.4° a day, so five rounds settle below a millisecond.
    private static Instant? Crossing(Instant noon, int side, double latitudeDeg, double longitudeDeg)
    {
        var guess = noon + Duration.FromHours(6 * side);
        for (var i = 0; i < 8; i++)
        {
            var sun = SolarCoordinates.At(guess);
            var horizon = SolarTime.HourAngleOfElevationDeg(latitudeDeg, sun.DeclinationDeg, RiseElevationDeg);
            if (horizon is null) return null;
            var next = guess + Duration.FromHours(SolarCoordinates.HalfTurn((side * horizon.Value) - sun.HourAngleDeg(longitudeDeg)) / 15.0);
            if (Math.Abs((next - guess).TotalSeconds) < 0.01) return next;
            guess = next;
        }
        return guess;
    }
}
