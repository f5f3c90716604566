namespace SolarEconomics;

/// <summary>How a surface is laid: the angle it is tilted by and the direction it faces.</summary>
/// <remarks>The <c>default</c> lies flat. Immutable, so safe to share between threads.</remarks>
public readonly record struct Plane
{
    /// <summary>A plane by its two angles.</summary>
    /// <param name="tiltDeg">Angle from level, in degrees: 0 lies flat, 90 is a wall. Range: 0 to 180, above 90 faces the ground.</param>
    /// <param name="azimuthDeg">Direction it faces, clockwise from north, in degrees: 90 is east, 180 south, 270 west. Range: −360 to 360; −15 is 345.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public Plane(double tiltDeg, double azimuthDeg)
    {
        TiltDeg = Require.Within(tiltDeg, 0, 180, "degrees from level; 0 lies flat, 90 is a wall, and a plane that leans the other way has an azimuth turned by 180");
        AzimuthDeg = SolarCoordinates.Turn(Require.Within(azimuthDeg, -360, 360, "degrees clockwise from north; 90 is east, 180 south, 270 west"));
    }

    /// <summary>Level ground.</summary>
    public static Plane Level => default;

    /// <summary>Angle from level. Unit: degrees. Range: 0 to 180.</summary>
    public double TiltDeg { get; }

    /// <summary>Direction it faces, clockwise from north. Unit: degrees. Range: 0 to below 360.</summary>
    public double AzimuthDeg { get; }

    /// <summary>The direction square to the plane.</summary>
    public SunDirection Normal => SunDirection.Of(TiltDeg, AzimuthDeg);

    /// <summary>Share of the sky dome that the plane sees, horizon free: (1 + cos tilt) / 2.</summary>
    public double SkyShare => (1 + Math.Cos(TiltDeg * SolarCoordinates.DegToRad)) / 2;

    /// <summary>Share of its view that is ground: (1 − cos tilt) / 2.</summary>
    public double GroundShare => (1 - Math.Cos(TiltDeg * SolarCoordinates.DegToRad)) / 2;

    /// <summary>The same plane, mirrored on the line from north to south: east becomes west.</summary>
    public Plane Mirrored => new(TiltDeg, (360 - AzimuthDeg) % 360);
}
