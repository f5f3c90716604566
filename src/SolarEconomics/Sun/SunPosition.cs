namespace SolarEconomics;

/// <summary>Where the sun stands at one instant, seen from one place.</summary>
/// <remarks>Angles in degrees. Made by <see cref="Sun"/>. Immutable, so safe to share between threads.</remarks>
public sealed record SunPosition
{
    internal SunPosition(double julianDay, SolarCoordinates sun, double hourAngleDeg, SunDirection direction, double refractionDeg)
    {
        JulianDay = julianDay;
        DeclinationDeg = sun.DeclinationDeg;
        RightAscensionDeg = sun.RightAscensionDeg;
        EquationOfTimeMinutes = sun.EquationOfTimeMinutes;
        DistanceAu = sun.DistanceAu;
        HourAngleDeg = hourAngleDeg;
        Direction = direction;
        RefractionDeg = refractionDeg;
    }

    /// <summary>Days since noon of 1 January 4713 BC, universal time.</summary>
    public double JulianDay { get; }

    /// <summary>Angle of the sun north of the equator. Range: about −23.44 to 23.44.</summary>
    public double DeclinationDeg { get; }

    /// <summary>Angle of the sun along the equator from the spring point. Range: 0 to below 360.</summary>
    public double RightAscensionDeg { get; }

    /// <summary>Solar time less mean time. Unit: minutes. Range: about −14.3 to 16.5.</summary>
    public double EquationOfTimeMinutes { get; }

    /// <summary>Distance of the sun. Unit: mean distance of the earth. Range: about 0.983 to 1.017.</summary>
    public double DistanceAu { get; }

    /// <summary>Angle since solar noon, afternoon positive. Range: above −180 to 180.</summary>
    public double HourAngleDeg { get; }

    /// <summary>Direction of the sun as a unit vector, without refraction: what irradiance on a plane is computed with.</summary>
    public SunDirection Direction { get; }

    /// <summary>How much the air lifts the sun; 0 where it is well below the horizon.</summary>
    public double RefractionDeg { get; }

    /// <summary>Angle between the sun as seen and the point overhead, refraction included. Range: 0 to 180.</summary>
    public double ZenithDeg => 90.0 - ElevationDeg;

    /// <summary>Angle of the sun as seen above the horizon, refraction included. Range: −90 to 90.</summary>
    public double ElevationDeg => 90.0 - Direction.ZenithDeg + RefractionDeg;

    /// <summary>Direction along the horizon, clockwise from north. Range: 0 to below 360.</summary>
    public double AzimuthDeg => Direction.AzimuthDeg;

    /// <summary>Angle between the sun as seen and the direction square to a plane. Range: 0 to 180.</summary>
    /// <param name="plane">The plane.</param>
    public double IncidenceDeg(Plane plane) => SunDirection.Of(ZenithDeg, AzimuthDeg).IncidenceDeg(plane);
}
