using NodaTime;

namespace SolarEconomics;

/// <summary>Where the sun stands, when it rises and sets, and when the seasons begin.</summary>
/// <remarks>The compact series of low precision: within 0.01° of the full theory from 1900 to 2100, which moves a sunrise by less than 3 s
/// and irradiance by less than 0.02 %. Source: sun-1. Thread-safe: there is no state.</remarks>
public static partial class Sun
{
    private const double ParallaxDeg = 8.794 / 3600.0;

    /// <summary>Position of the sun at an instant, seen from a place.</summary>
    /// <param name="instant">The instant.</param>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="longitudeDeg">Degrees, east positive. Range: −180 to 180.</param>
    /// <param name="air">The air at the place, for refraction. Default: <see cref="Air.Usual"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Latitude or longitude is outside its range.</exception>
    public static SunPosition At(Instant instant, double latitudeDeg, double longitudeDeg, Air? air = null)
    {
        Require.Within(latitudeDeg, -90, 90, "degrees, north positive");
        Require.Within(longitudeDeg, -180, 180, "degrees, east positive");
        var sun = SolarCoordinates.At(instant);
        var hourAngle = sun.HourAngleDeg(longitudeDeg);
        var geocentric = SunDirection.OfHourAngle(latitudeDeg, sun.DeclinationDeg, hourAngle);
        // Seen from the surface instead of the centre of the earth the sun stands up to 9" lower.
        var zenith = geocentric.ZenithDeg + (ParallaxDeg / sun.DistanceAu * Math.Sin(geocentric.ZenithDeg * SolarCoordinates.DegToRad));
        var direction = SunDirection.Of(Math.Min(180, zenith), geocentric.AzimuthDeg);
        return new SunPosition(JulianDay(instant), sun, hourAngle, direction, (air ?? Air.Usual).RefractionDeg(90 - zenith));
    }

    /// <summary>Position of the sun at an instant, seen from a site.</summary>
    /// <param name="instant">The instant.</param>
    /// <param name="site">The site.</param>
    public static SunPosition At(Instant instant, Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return At(instant, site.LatitudeDeg, site.LongitudeDeg);
    }

    /// <summary>Days since noon of 1 January 4713 BC, universal time.</summary>
    /// <param name="instant">The instant.</param>
    public static double JulianDay(Instant instant) => SolarCoordinates.JulianDay(instant);
}
