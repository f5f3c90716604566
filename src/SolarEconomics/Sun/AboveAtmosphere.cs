using NodaTime;

namespace SolarEconomics;

/// <summary>Sunlight above the atmosphere. Unit: W/m².</summary>
public static class AboveAtmosphere
{
    /// <summary>Sunlight square to the beam at the mean distance of the earth: 1,361 W/m².</summary>
    /// <remarks>Source: sun-6. Older books use 1,353, 1,366.1 or 1,367.</remarks>
    public const double SolarConstantWm2 = 1361.0;

    /// <summary>Sunlight square to the beam at an instant. Unit: W/m². Range: about 1,316 to 1,407.</summary>
    /// <param name="instant">The instant.</param>
    /// <remarks>Equation: E0 = 1361 / R², R the distance of the sun in mean distances.</remarks>
    public static double NormalWm2(Instant instant) =>
        SolarCoordinates.At(instant).ExtraterrestrialNormalWm2;

    /// <summary>Energy of a day on a level plane above the atmosphere. Unit: kWh/m².</summary>
    /// <param name="date">Local date at the place.</param>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="longitudeDeg">Degrees, east positive. Range: −180 to 180.</param>
    /// <remarks>Equation: H0 = 24/π · E0 (ωs sin φ sin δ + cos φ cos δ sin ωs), sun taken at solar noon.</remarks>
    public static double DayKwhM2(LocalDate date, double latitudeDeg, double longitudeDeg)
    {
        var noon = Sun.On(date, latitudeDeg, longitudeDeg).Noon;
        var sun = SolarCoordinates.At(noon);
        var sunset = SolarTime.SunsetHourAngleDeg(latitudeDeg, sun.DeclinationDeg) * SolarCoordinates.DegToRad;
        var (sinLatitude, cosLatitude) = Math.SinCos(latitudeDeg * SolarCoordinates.DegToRad);
        var (sinDeclination, cosDeclination) = Math.SinCos(sun.DeclinationDeg * SolarCoordinates.DegToRad);
        return 24 / Math.PI * sun.ExtraterrestrialNormalWm2 / 1000
            * ((sunset * sinLatitude * sinDeclination) + (cosLatitude * cosDeclination * Math.Sin(sunset)));
    }
}
