namespace SolarEconomics;

/// <summary>A direction in the sky as a unit vector, so that every angle to a plane is one product without special cases.</summary>
/// <param name="East">Part towards east.</param>
/// <param name="North">Part towards north.</param>
/// <param name="Up">Part upwards: the cosine of the zenith angle.</param>
/// <remarks>The <c>default</c> is no direction (length 0).</remarks>
public readonly record struct SunDirection(double East, double North, double Up)
{
    /// <summary>Angle from the point overhead. Unit: degrees. Range: 0 to 180.</summary>
    public double ZenithDeg => Math.Atan2(Math.Sqrt((East * East) + (North * North)), Up) / SolarCoordinates.DegToRad;

    /// <summary>Direction along the horizon, clockwise from north. Unit: degrees. Range: 0 to below 360.</summary>
    public double AzimuthDeg => SolarCoordinates.Turn(Math.Atan2(East, North) / SolarCoordinates.DegToRad);

    /// <summary>The direction of two angles.</summary>
    /// <param name="zenithDeg">Angle from the point overhead, in degrees. Range: 0 to 180.</param>
    /// <param name="azimuthDeg">Clockwise from north, in degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">The zenith angle is outside its range.</exception>
    public static SunDirection Of(double zenithDeg, double azimuthDeg)
    {
        Require.Within(zenithDeg, 0, 180, "degrees from overhead");
        var (sinZenith, cosZenith) = Math.SinCos(zenithDeg * SolarCoordinates.DegToRad);
        var (sinAzimuth, cosAzimuth) = Math.SinCos(Require.Finite(azimuthDeg) * SolarCoordinates.DegToRad);
        return new SunDirection(sinZenith * sinAzimuth, sinZenith * cosAzimuth, cosZenith);
    }

    /// <summary>The direction of the sun by latitude, declination and hour angle.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="declinationDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="hourAngleDeg">Degrees since solar noon, afternoon positive.</param>
    /// <remarks>Equation: up = sin φ sin δ + cos φ cos δ cos ω; north = cos φ sin δ − sin φ cos δ cos ω; east = −cos δ sin ω. Source: sun-2.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public static SunDirection OfHourAngle(double latitudeDeg, double declinationDeg, double hourAngleDeg)
    {
        Require.Within(latitudeDeg, -90, 90, "degrees, north positive");
        Require.Within(declinationDeg, -90, 90, "degrees, north positive");
        var (sinLatitude, cosLatitude) = Math.SinCos(latitudeDeg * SolarCoordinates.DegToRad);
        var (sinDeclination, cosDeclination) = Math.SinCos(declinationDeg * SolarCoordinates.DegToRad);
        var (sinHour, cosHour) = Math.SinCos(Require.Finite(hourAngleDeg) * SolarCoordinates.DegToRad);
        return new SunDirection(
            -cosDeclination * sinHour,
            (cosLatitude * sinDeclination) - (sinLatitude * cosDeclination * cosHour),
            (sinLatitude * sinDeclination) + (cosLatitude * cosDeclination * cosHour));
    }

    /// <summary>Cosine of the angle between this direction and the one square to a plane; below 0 behind the plane.</summary>
    /// <param name="plane">The plane.</param>
    public double CosIncidence(Plane plane)
    {
        var normal = plane.Normal;
        return (East * normal.East) + (North * normal.North) + (Up * normal.Up);
    }

    /// <summary>Angle between this direction and the one square to a plane. Unit: degrees. Range: 0 to 180.</summary>
    /// <param name="plane">The plane.</param>
    public double IncidenceDeg(Plane plane) => Math.Acos(Math.Clamp(CosIncidence(plane), -1, 1)) / SolarCoordinates.DegToRad;

    /// <summary>Beam on a tilted plane as a multiple of beam on level ground; <see langword="null"/> while the sun is not up.</summary>
    /// <param name="plane">The plane.</param>
    /// <remarks>Equation: Rb = max(0, cos θ) / cos z. Source: sun-2.</remarks>
    public double? BeamRatio(Plane plane) => Up > 0 ? Math.Max(0, CosIncidence(plane)) / Up : null;
}
