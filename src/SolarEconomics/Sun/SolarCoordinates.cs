using NodaTime;

namespace SolarEconomics;

/// <summary>Where the sun stands among the stars at one instant: the low-precision series, good to 0.01° from 1900 to 2100.</summary>
/// <remarks>Angles in degrees. Source: sun-1.</remarks>
internal readonly record struct SolarCoordinates(
    double MeanLongitudeDeg, double ApparentLongitudeDeg, double ObliquityDeg, double NutationDeg, double DistanceAu, double SiderealTimeDeg)
{
    internal const double DegToRad = Math.PI / 180.0;

    /// <summary>Julian day of 2000-01-01 12:00.</summary>
    internal const double J2000 = 2451545.0;

    private static readonly Instant J2000Instant = Instant.FromUtc(2000, 1, 1, 12, 0);

    // Earth time lags even time by 64 s in 2000 and 69 s in the 2020s. Ten seconds move the sun by 0.0001°, so one figure serves.
    private const double EvenTimeAheadSeconds = 67.0;

    internal double RightAscensionDeg
    {
        get
        {
            var (sinLongitude, cosLongitude) = Math.SinCos(ApparentLongitudeDeg * DegToRad);
            return Turn(Math.Atan2(Math.Cos(ObliquityDeg * DegToRad) * sinLongitude, cosLongitude) / DegToRad);
        }
    }

    internal double DeclinationDeg =>
        Math.Asin(Math.Sin(ObliquityDeg * DegToRad) * Math.Sin(ApparentLongitudeDeg * DegToRad)) / DegToRad;

    /// <summary>Sunlight above the atmosphere square to the beam, in W/m².</summary>
    internal double ExtraterrestrialNormalWm2 => AboveAtmosphere.SolarConstantWm2 / (DistanceAu * DistanceAu);

    /// <summary>Direction from a place, seen from the centre of the earth: parallax (9″) left out.</summary>
    internal SunDirection DirectionFrom(double latitudeDeg, double longitudeDeg) =>
        SunDirection.OfHourAngle(latitudeDeg, DeclinationDeg, HourAngleDeg(longitudeDeg));

    /// <summary>Angle since solar noon at a longitude.</summary>
    internal double HourAngleDeg(double longitudeDeg) => HalfTurn(SiderealTimeDeg + longitudeDeg - RightAscensionDeg);

    /// <summary>Solar time less mean time, in minutes.</summary>
    internal double EquationOfTimeMinutes =>
        4.0 * HalfTurn(MeanLongitudeDeg - 0.0057183 - RightAscensionDeg + (NutationDeg * Math.Cos(ObliquityDeg * DegToRad)));

    internal static double JulianDay(Instant instant) => J2000 + DaysSinceJ2000(instant);

    // Counted from 2000, not as a Julian day: seven digits fewer before the point, or an hour angle would be rounded to 40 µs.
    private static double DaysSinceJ2000(Instant instant) => (instant - J2000Instant).TotalDays;

    internal static SolarCoordinates At(Instant instant)
    {
        var days = DaysSinceJ2000(instant);
        var t = (days + (EvenTimeAheadSeconds / 86400.0)) / 36525.0;
        var meanLongitude = 280.46646 + (t * (36000.76983 + (t * 0.0003032)));
        var anomaly = 357.52911 + (t * (35999.05029 - (t * 0.0001537)));
        var eccentricity = 0.016708634 - (t * (0.000042037 + (t * 0.0000001267)));
        var m = anomaly * DegToRad;
        var centre = ((1.914602 - (t * (0.004817 + (t * 0.000014)))) * Math.Sin(m))
            + ((0.019993 - (t * 0.000101)) * Math.Sin(2 * m))
            + (0.000289 * Math.Sin(3 * m));
        var distance = 1.000001018 * (1 - (eccentricity * eccentricity)) / (1 + (eccentricity * Math.Cos(m + (centre * DegToRad))));
        var node = (125.04 - (1934.136 * t)) * DegToRad;
        var nutation = -0.00478 * Math.Sin(node);
        var obliquity = 23.4392911 - (t * (0.0130042 + (t * (0.00000016 - (t * 0.000000504))))) + (0.00256 * Math.Cos(node));
        var centuries = days / 36525.0;
        var sidereal = 280.46061837 + (360.98564736629 * days) + (0.000387933 * centuries * centuries)
            + (nutation * Math.Cos(obliquity * DegToRad));
        return new SolarCoordinates(
            Turn(meanLongitude), Turn(meanLongitude + centre - 0.00569 + nutation), obliquity, nutation, distance, Turn(sidereal));
    }

    /// <summary>An angle brought into [0°, 360°).</summary>
    internal static double Turn(double deg)
    {
        var turned = deg % 360.0;
        return turned < 0 ? turned + 360.0 : turned;
    }

    /// <summary>An angle brought into (−180°, 180°].</summary>
    internal static double HalfTurn(double deg)
    {
        var turned = Turn(deg);
        return turned > 180.0 ? turned - 360.0 : turned;
    }
}
